import { nameKey } from "./nameKey";
import type { SheetSnapshot, TableArea } from "./sheetSnapshot";

/** What a column of days on which nobody works is headed. */
const HEADINGS = [
  "closed",
  "closed days",
  "closed dates",
  "holiday",
  "holidays",
  "bank holidays",
  "public holidays",
].map(nameKey);

/** The first column of a host's table that is headed as one of closed days, as an index into the sheet's values; null where none is. */
export function closedDaysColumn(sheet: SheetSnapshot, area: TableArea): number | null {
  const headings = sheet.values[area.row - sheet.firstRow] ?? [];
  const left = area.column - sheet.firstColumn;
  for (let column = left; column < left + area.columnCount; column++) {
    const heading = headings[column];
    if (typeof heading === "string" && HEADINGS.includes(nameKey(heading))) return column;
  }
  return null;
}
