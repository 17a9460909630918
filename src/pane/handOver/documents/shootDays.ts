import { readDate } from "../../../sheet/readDate";
import { readDayNotes } from "../../../sheet/readDayNotes";
import type { ReadTables } from "../../state/ReadTables";

/** The days of the shoot, soonest first: those of the looks, else those that have a call. */
export function shootDays(read: ReadTables): readonly number[] {
  const ofLooks = read.tables
    .filter(({ kind }) => kind === "looks")
    .flatMap((table) => {
      const column = table.columnOf["date"];
      if (column === undefined) return [];
      return table.dataRows.flatMap((row) => {
        const day = readDate(table.cells[row]?.[column], "");
        return day.ok && day.value !== null && day.value !== 0 ? [day.value] : [];
      });
    });
  const days =
    ofLooks.length > 0
      ? ofLooks
      : readDayNotes(read.workbook.sheets, read.tables).flatMap(({ date, call }) =>
          date === null || call === null ? [] : [date],
        );
  return [...new Set(days)].sort((a, b) => a - b);
}
