import type { SheetSnapshot, WorkbookSnapshot } from "../../sheet/sheetSnapshot";

/** The workbook with those sheets as they are now; sheets it does not hold are left out, since order and names need a whole reading. */
export function replaceSheets(workbook: WorkbookSnapshot, sheets: readonly SheetSnapshot[]): WorkbookSnapshot {
  const newer = new Map(sheets.map((sheet) => [sheet.sheetId, sheet]));
  return { ...workbook, sheets: workbook.sheets.map((sheet) => newer.get(sheet.sheetId) ?? sheet) };
}
