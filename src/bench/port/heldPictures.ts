import type { FilePicture } from "../file/FilePicture";
import { settledEdits } from "../save/settledEdits";
import { shiftedIndex } from "../save/shiftedIndex";
import type { StructureEdit } from "../save/structureEdit";

/** The pictures by the cells they belong to now that rows and columns came and went; those of a row that was taken out are left out. */
export function heldPictures(pictures: readonly FilePicture[], edits: readonly StructureEdit[]): FilePicture[] {
  const settled = settledEdits(edits);
  return pictures.flatMap((picture) => {
    let { row, column }: { row: number | null; column: number | null } = picture.at;
    for (const edit of settled) {
      if (edit.sheetId !== picture.at.sheetId) continue;
      if (edit.axis === "row") row = row === null ? null : shiftedIndex(row, edit);
      else column = column === null ? null : shiftedIndex(column, edit);
    }
    if (row === null || column === null) return [];
    return [{ ...picture, at: { ...picture.at, row, column } }];
  });
}
