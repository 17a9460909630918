import type { SheetPicture } from "../../sheet/SheetPicture";

/** A picture that a workbook's file holds, as it was opened. */
export interface FilePicture extends SheetPicture {
  /** The part with the picture itself. */
  readonly path: string;
}
