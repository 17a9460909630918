import type { Cell } from "./cell";

/** A named table of the host, as an area of its sheet. Rows and columns count from 0. */
export interface TableArea {
  readonly name: string;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
}

/** One sheet's used range, read in one go. */
export interface SheetSnapshot {
  readonly sheetId: string;
  readonly name: string;
  readonly visible: boolean;
  readonly isProtected: boolean;
  /** Sheet row and column (from 0) of values[0][0]. */
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly values: readonly (readonly Cell[])[];
  /** The formula (en-US, with =) of each cell, or null where a value was typed. Same shape as values. */
  readonly formulas: readonly (readonly (string | null)[])[];
  readonly tables: readonly TableArea[];
}

/** A whole workbook, read in one go. */
export interface WorkbookSnapshot {
  readonly name: string;
  readonly dateSystem: 1900 | 1904;
  readonly sheets: readonly SheetSnapshot[];
}
