import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import type { SheetSnapshot } from "../sheet/sheetSnapshot";
import { inExcel } from "./inExcel";
import { tableArea } from "./tableArea";
import { usedCells } from "./usedCells";

/**
 * One sheet in one sync; a second, small one follows where the sheet has tables of the host, since a table's
 * place can only be asked once its name is known.
 *
 * Needs ExcelApi 1.4 (getUsedRangeOrNullObject).
 */
export function readSheet(sheetId: string): Promise<Outcome<SheetSnapshot>> {
  return inExcel("read the sheet", async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    // eslint-disable-next-line office-addins/load-object-before-read -- a navigation to another object, nothing is read
    const tables = sheet.tables;
    const [used] = await usedCells(context, [sheet], () => {
      sheet.load("id,name,visibility,protection/protected");
      tables.load("items/name");
    });
    const areas = tables.items.map((table) => ({
      name: table.name,
      range: table.getRange().load("rowIndex,columnIndex,rowCount,columnCount"),
    }));
    if (areas.length > 0) await context.sync();
    return succeed({
      sheetId: sheet.id,
      name: sheet.name,
      visible: sheet.visibility === "Visible",
      isProtected: sheet.protection.protected,
      ...(used ?? { firstRow: 0, firstColumn: 0, values: [], formulas: [] }),
      tables: areas.map((area) => tableArea(area.name, area.range)),
    });
  });
}
