import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import type { NewColumns } from "../sheet/buildPlan";
import { listCells } from "../sheet/listCells";
import { hasExcelApi } from "./hasExcelApi";

/** Why columns must not be added where blocks are merged, or null; in one sync. Before ExcelApi 1.13 no host can tell. */
export async function refuseMerged(
  context: Excel.RequestContext,
  added: readonly NewColumns[],
): Promise<Outcome<never> | null> {
  if (added.length === 0 || !hasExcelApi("1.13")) return null;
  const asked = added.map(({ sheetId, row, column, rowCount, headings }) => {
    const worksheet = context.workbook.worksheets.getItem(sheetId).load("name");
    const merged = worksheet
      .getRangeByIndexes(row, column, rowCount, headings.length)
      .getMergedAreasOrNullObject()
      .load("areas/items/rowIndex,areas/items/columnIndex");
    return { worksheet, merged };
  });
  await context.sync();
  for (const { worksheet, merged } of asked) {
    if (merged.isNullObject) continue;
    const cells = merged.areas.items.map(({ rowIndex: row, columnIndex: column }) => ({ row, column }));
    return fail("cells-merged", { sheet: worksheet.name, cells: listCells(cells) });
  }
  return null;
}
