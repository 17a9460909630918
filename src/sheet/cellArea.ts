/** A rectangle of cells on one sheet. Rows and columns count from 0. */
export interface CellArea {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  readonly rowCount: number;
  readonly columnCount: number;
}
