import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { coveredIndex } from "../sheet/coveredIndex";
import type { SheetPicture } from "../sheet/SheetPicture";
import { hasExcelApi } from "./hasExcelApi";
import { inExcel } from "./inExcel";
import { pictureKey } from "./pictureKey";

/** Rows and columns below and right of what is used that a picture may lie over and still be told apart. */
const SPARE = 40;

/**
 * The pictures that lie over the sheets, in three syncs: the sheets, their shapes, then the heights and widths of the rows
 * and columns of those that have any, since a shape tells only its distance from the sheet's edges.
 *
 * Needs ExcelApi 1.9 (shapes, getRowProperties). Pictures within a cell are not told: no requirement set reads them. Nor
 * is one that hidden rows have pressed flat, since at the edge where it lies several rows meet.
 */
export function listPictures(): Promise<Outcome<readonly SheetPicture[]>> {
  const doing = "see the pictures on the sheets";
  return inExcel(doing, async (context) => {
    if (!hasExcelApi("1.9")) {
      const detail = "this Excel shows an add-in no pictures";
      return fail("host-refused", { doing, detail, remedy: "choose the picture files instead" });
    }
    const worksheets = context.workbook.worksheets.load("items/id");
    await context.sync();
    const sheets = worksheets.items.map((worksheet) => ({
      worksheet,
      shapes: worksheet.shapes.load(
        "items/id,items/name,items/type,items/visible,items/top,items/left,items/height,items/width",
      ),
      used: worksheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount"),
    }));
    await context.sync();
    const pictured = sheets.flatMap(({ worksheet, shapes, used }) => {
      const pictures = shapes.items.filter(({ type, visible, height }) => type === "Image" && visible && height >= 1);
      if (pictures.length === 0) return [];
      const rowCount = SPARE + (used.isNullObject ? 0 : used.rowIndex + used.rowCount);
      const columnCount = SPARE + (used.isNullObject ? 0 : used.columnIndex + used.columnCount);
      const rows = worksheet
        .getRangeByIndexes(0, 0, rowCount, 1)
        .getRowProperties({ rowHidden: true, format: { rowHeight: true } });
      const columns = worksheet
        .getRangeByIndexes(0, 0, 1, columnCount)
        .getColumnProperties({ columnHidden: true, format: { columnWidth: true } });
      return [{ worksheet, pictures, rows, columns }];
    });
    if (pictured.length > 0) await context.sync();
    return succeed(
      pictured.flatMap(({ worksheet, pictures, rows, columns }) => {
        const heights = rows.value.map(({ rowHidden, format }) => (rowHidden === true ? 0 : (format?.rowHeight ?? 0)));
        const widths = columns.value.map(({ columnHidden, format }) =>
          columnHidden === true ? 0 : (format?.columnWidth ?? 0),
        );
        return pictures.map((shape): SheetPicture => {
          const row = coveredIndex(shape.top, shape.height, (index) => heights[index] ?? 0, heights.length);
          const column = coveredIndex(shape.left, shape.width, (index) => widths[index] ?? 0, widths.length);
          const key = pictureKey(worksheet.id, shape.id, shape.width, shape.height);
          return { key, at: { sheetId: worksheet.id, row, column }, name: shape.name };
        });
      }),
    );
  });
}
