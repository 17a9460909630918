import type { ColumnChoice } from "./columnChoice";
import type { TableKind } from "./tableKind";

/** Headings given their meaning by hand, for one kind of table. */
export interface KindColumnChoice extends ColumnChoice {
  readonly kind: TableKind;
  /** Where no column is the field: the heading that was said not to be it. Left out it holds for every table of the kind. */
  readonly notHeading?: string;
}

/** What is kept in the workbook of such choices, as JSON: the name of a sheet to its choices. */
export type ColumnChoices = Readonly<Record<string, readonly KindColumnChoice[]>>;
