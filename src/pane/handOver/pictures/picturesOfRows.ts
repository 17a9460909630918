import type { SheetTable } from "../../../sheet/sheetTable";
import type { SheetPictureShown } from "./SheetPictureShown";

/** The pictures that lie over rows of a table, by the index of the row in it, in the order of the sheet. */
export function picturesOfRows(
  { sheetId, firstRow, firstColumn, cells, dataRows }: SheetTable,
  pictures: readonly SheetPictureShown[],
): ReadonlyMap<number, readonly SheetPictureShown[]> {
  const isData = new Set(dataRows);
  const lastColumn = firstColumn + Math.max(0, ...cells.map((row) => row.length));
  const byRow = new Map<number, SheetPictureShown[]>();
  for (const picture of pictures) {
    const { at } = picture;
    const row = at.row - firstRow;
    // A picture may stand just beside the last column; further away it belongs to something else.
    if (at.sheetId !== sheetId || !isData.has(row) || at.column < firstColumn - 1 || at.column > lastColumn) continue;
    byRow.set(row, [...(byRow.get(row) ?? []), picture]);
  }
  return byRow;
}
