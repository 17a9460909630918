import { closedDaysColumn } from "./closedDaysColumn";
import type { ClosedDaysFound } from "./closedDaysFound";
import { readDate } from "./readDate";
import type { SheetSnapshot } from "./sheetSnapshot";
import { structuredReference } from "./structuredReference";

/** The first table of the workbook with a column of closed days. Cells of it that are no date are passed over. */
export function readClosedDaysFound(sheets: readonly SheetSnapshot[]): ClosedDaysFound {
  for (const sheet of sheets) {
    for (const area of sheet.tables) {
      const column = closedDaysColumn(sheet, area);
      if (column === null) continue;
      const top = area.row - sheet.firstRow + 1;
      const days = sheet.values.slice(top, top + area.rowCount - 1).flatMap((cells) => {
        const day = readDate(cells[column], "");
        return day.ok && day.value !== null ? [day.value] : [];
      });
      if (days.length === 0) continue;
      const at = { sheetId: sheet.sheetId, row: area.row, column: sheet.firstColumn + column };
      const heading = String(sheet.values[area.row - sheet.firstRow]?.[column] ?? "");
      const reference = structuredReference(area.name, heading, false);
      return { days, place: { at, sheetName: sheet.name, reference } };
    }
  }
  return { days: [], place: null };
}
