import { closedDaysColumn } from "../../sheet/closedDaysColumn";
import { readClosedDaysFound } from "../../sheet/readClosedDaysFound";
import type { SheetSnapshot, TableArea, WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import type { ClosedDaysTable } from "./ClosedDaysTable";

/** What says what a closed day is for, in the five languages of the headings. */
const NAMES =
  /^(?:why|what|what for|name|reason|note|holiday|day|pourquoi|nom|por ?qu[eé]|nombre|perch[eé]|nome|warum|name des feiertags)$/i;

/** The table of closed days that the functions and the pane count by, else the first that is headed as one and is still blank; null where there is neither. */
export function findClosedDays(workbook: WorkbookSnapshot): ClosedDaysTable | null {
  const { place } = readClosedDaysFound(workbook.sheets);
  for (const sheet of workbook.sheets) {
    for (const area of sheet.tables) {
      const column = closedDaysColumn(sheet, area);
      if (column === null) continue;
      const at = { sheetId: sheet.sheetId, row: area.row, column: sheet.firstColumn + column };
      const isIt =
        place === null
          ? isBlankBelow(sheet, area, column)
          : place.at.sheetId === at.sheetId && place.at.row === at.row && place.at.column === at.column;
      if (isIt) return tableOf(sheet, area, column);
    }
  }
  return null;
}

function tableOf(sheet: SheetSnapshot, area: TableArea, column: number): ClosedDaysTable {
  const left = area.column - sheet.firstColumn;
  const headings = sheet.values[area.row - sheet.firstRow]?.slice(left, left + area.columnCount) ?? [];
  const dayColumn = column - left;
  const named = headings.findIndex(
    (heading, index) => index !== dayColumn && typeof heading === "string" && NAMES.test(heading.trim()),
  );
  return {
    sheet,
    area,
    at: { sheetId: sheet.sheetId, row: area.row, column: sheet.firstColumn + column },
    dayColumn,
    nameColumn: named < 0 ? null : named,
  };
}

function isBlankBelow(sheet: SheetSnapshot, area: TableArea, column: number): boolean {
  const top = area.row - sheet.firstRow + 1;
  return sheet.values.slice(top, top + area.rowCount - 1).every((cells) => (cells[column] ?? null) === null);
}
