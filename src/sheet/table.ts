import type { ColumnHint } from "./readHeading";
import type { TableKind } from "./tableKind";

/**
 * A range in which the heading row was found and each heading of interest was given its meaning.
 *
 * Rows and columns are indices into `cells`, exactly as passed; nothing is copied.
 */
export interface Table {
  readonly kind: TableKind;
  readonly cells: readonly (readonly unknown[])[];
  readonly headingRow: number;
  /** The headings as typed, "" where blank. */
  readonly headings: readonly string[];
  /** Field (for example "out" or "quantityBack") to column; a field whose heading is missing is absent. */
  readonly columnOf: Readonly<Partial<Record<string, number>>>;
  /** Field to what its heading says of currency or unit, where it says something. */
  readonly hintOf?: Readonly<Partial<Record<string, ColumnHint>>>;
  /** Rows with data: blank rows, repeated heading rows and a totals row are already passed over. */
  readonly dataRows: readonly number[];
}
