import type { Cell } from "../../sheet/cell";
import type { TableKind } from "../../sheet/tableKind";

/** One column of a table to begin with. */
export interface StartColumn {
  readonly heading: string;
  readonly format: string | null;
  /** "yes,no", or "=lenders.Lender" for a column of another of these tables, or null. */
  readonly list: string | null;
}

/** A table to begin with. */
export interface StartTable {
  readonly id: string;
  /** Of the sheet; the table is called the same without spaces. */
  readonly name: string;
  readonly why: string;
  /** The kind it is read as; null where it is known by its headings alone (people, closed days, job). */
  readonly kind: TableKind | null;
  /** The headings without which little can be said. */
  readonly needed: readonly string[];
  readonly columns: readonly StartColumn[];
  /** Rows that belong to it from the beginning. */
  readonly rows: readonly (readonly Cell[])[];
  /** Rows to see how it is filled; work-2 stands for a day. The mark stands behind them in Note. */
  readonly examples: readonly (readonly Cell[])[];
}
