import type { Cell } from "./cell";

/** A sheet to add: one table of the host, from A1 on, with its heading row. */
export interface NewSheet {
  readonly name: string;
  readonly tableName: string;
  readonly headings: readonly string[];
  /** At least one row, blank or not; each as wide as the headings. */
  readonly rows: readonly (readonly Cell[])[];
  /** The number format of each column, or null for the host's own. */
  readonly formats: readonly (string | null)[];
  /**
   * What each column offers to choose from, or null: "yes,no" is the list itself, "=Lenders!$A$2:$A$500" where it stands.
   * Anything else may be typed all the same.
   */
  readonly lists: readonly (string | null)[];
}

/** A sheet that was added, to be taken away again. */
export interface BuiltSheet {
  readonly sheetId: string;
  readonly sheet: NewSheet;
}

/** Columns to add at the right of a table or of an area with headings. */
export interface NewColumns {
  readonly sheetId: string;
  /** The host's table that grows, or null where the area has no name. */
  readonly tableName: string | null;
  /** The cell of the first new heading. */
  readonly row: number;
  readonly column: number;
  /** With the heading row; all cells of the new columns must be blank. */
  readonly rowCount: number;
  readonly headings: readonly string[];
  readonly formats: readonly (string | null)[];
}

/** Rows to add at the foot of a table of the host, which grows by them. */
export interface NewRows {
  readonly sheetId: string;
  readonly tableName: string;
  /** The first cell right below the table. */
  readonly row: number;
  readonly column: number;
  /** Each as wide as the table; all cells they go into must be blank. */
  readonly rows: readonly (readonly Cell[])[];
  readonly formats: readonly (string | null)[];
}

/** What to build in one step, and what to take away. The opposite of a plan puts things back as they were. */
export interface BuildPlan {
  readonly addSheets: readonly NewSheet[];
  readonly removeSheets: readonly BuiltSheet[];
  readonly addColumns: readonly NewColumns[];
  readonly removeColumns: readonly NewColumns[];
  /** Left out: none. */
  readonly addRows?: readonly NewRows[];
  readonly removeRows?: readonly NewRows[];
}
