import type { SheetPictureShown } from "../pictures/SheetPictureShown";
import type { HandOverSource } from "./HandOverSource";

/** The pictures on sheets without any table that is read: a board of references for the job as a whole. Above a table they are decoration. */
export function moodPictures({ read, sheetPictures }: HandOverSource): readonly SheetPictureShown[] {
  const withTable = new Set(read.tables.map(({ sheetId }) => sheetId));
  return sheetPictures.filter(({ at }) => !withTable.has(at.sheetId));
}
