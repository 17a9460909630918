/** Rows or columns put into a sheet or taken out of it, counted from 0. */
export interface StructureEdit {
  readonly sheetId: string;
  readonly axis: "row" | "column";
  readonly kind: "insert" | "remove";
  readonly from: number;
  readonly count: number;
}
