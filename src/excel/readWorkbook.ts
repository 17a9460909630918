import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import type { TableArea, WorkbookSnapshot } from "../sheet/sheetSnapshot";
import { inExcel } from "./inExcel";
import { tableArea } from "./tableArea";
import { usedCells } from "./usedCells";

/** What DATE(2000,1,1) gives in a workbook of the 1904 date system; in the 1900 system it is 36526. */
const MILLENNIUM_1904 = 35064;

/**
 * Every sheet of the workbook, in two syncs: names first, then all the cells at once.
 *
 * Needs ExcelApi 1.7 (workbook.name); the date system is asked of the workbook's own DATE function
 * (ExcelApi 1.2), since no property tells it in every host.
 */
export function readWorkbook(): Promise<Outcome<WorkbookSnapshot>> {
  return inExcel("read the workbook", async (context) => {
    const workbook = context.workbook.load("name");
    const worksheets = workbook.worksheets.load("items/id,items/name,items/visibility,items/protection/protected");
    const tables = workbook.tables.load("items/name,items/worksheet/id");
    const millennium = workbook.functions.date(2000, 1, 1).load("value");
    await context.sync();

    const areas = tables.items.map((table) => ({
      name: table.name,
      sheetId: table.worksheet.id,
      range: table.getRange(),
    }));
    const cells = await usedCells(context, worksheets.items, () => {
      for (const area of areas) area.range.load("rowIndex,columnIndex,rowCount,columnCount");
    });
    const sheets = worksheets.items.map((sheet, index) => {
      const used = cells[index] ?? { firstRow: 0, firstColumn: 0, values: [], formulas: [] };
      const own: TableArea[] = areas.filter((area) => area.sheetId === sheet.id).map((a) => tableArea(a.name, a.range));
      return {
        sheetId: sheet.id,
        name: sheet.name,
        visible: sheet.visibility === "Visible",
        isProtected: sheet.protection.protected,
        ...used,
        tables: own,
      };
    });
    return succeed({ name: workbook.name, dateSystem: millennium.value === MILLENNIUM_1904 ? 1904 : 1900, sheets });
  });
}
