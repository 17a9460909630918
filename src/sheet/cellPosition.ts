/** One cell of a workbook. Rows and columns count from 0. */
export interface CellPosition {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}
