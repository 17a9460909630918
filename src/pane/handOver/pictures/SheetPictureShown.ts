import type { CellPosition } from "../../../sheet/cellPosition";
import type { LookPicture } from "./LookPicture";

/** A picture of the workbook itself, drawn anew, by the cell it belongs to. */
export interface SheetPictureShown extends LookPicture {
  readonly at: CellPosition;
}
