import type { CellPosition } from "./cellPosition";

/** A picture of a workbook, by the cell it belongs to: the one it stands in, or the one that coveredIndex tells of those it lies over. */
export interface SheetPicture {
  /** Another one once the picture is another or, where that changes what is shown, has another size. */
  readonly key: string;
  readonly at: CellPosition;
  /** As the workbook calls it, "Picture 3" for example; it need not be the only one of that name. */
  readonly name: string;
}
