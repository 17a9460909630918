import type { Look } from "../../domain/day/look";
import { lookKey } from "../../sheet/lookKey";
import { readDate } from "../../sheet/readDate";
import type { SheetTable } from "../../sheet/sheetTable";

/** The row of the looks table that a look was read from, where each day may number its looks anew; null where none is. */
export function rowOfLook(table: SheetTable, look: Look): number | null {
  const cellOf = (row: number, field: string): unknown => table.cells[row]?.[table.columnOf[field] ?? -1];
  const row = table.dataRows.find((each) => {
    if (lookKey(String(cellOf(each, "look") ?? "")) !== look.key) return false;
    const date = readDate(cellOf(each, "date") ?? null, "");
    return date.ok && (date.value || null) === look.date;
  });
  return row ?? null;
}
