import type { Table } from "./table";

/** A table with the place it stands at in the workbook. */
export interface SheetTable extends Table {
  readonly sheetId: string;
  readonly sheetName: string;
  /** The host's name of the table, or null (also left out) where it is an area without one. */
  readonly tableName?: string | null;
  /** Sheet row and column (from 0) of cells[0][0]. */
  readonly firstRow: number;
  readonly firstColumn: number;
  /** The formula of each cell of `cells`, or null where a value was typed. */
  readonly formulas: readonly (readonly (string | null)[])[];
  /** Fields that two or more headings could be, with those columns; such a field is not in columnOf. */
  readonly contested?: ReadonlyMap<string, readonly number[]>;
}
