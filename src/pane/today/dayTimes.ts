import type { CellPosition } from "../../sheet/cellPosition";
import { readDate } from "../../sheet/readDate";
import { readHeading } from "../../sheet/readHeading";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import type { SheetSnapshot } from "../../sheet/sheetSnapshot";
import type { SheetTable } from "../../sheet/sheetTable";
import type { ReadTables } from "../state/ReadTables";
import type { CallAndWrap } from "./CallAndWrap";
import { placeOf } from "./placeOf";
import { sheetNotes } from "./sheetNotes";

/**
 * The calls and wraps that the workbook holds: the rows of its day tables, and notes with the word in one cell and the
 * value in the cell to its right ("Call", 08:00), a "Date" among the same notes giving the day.
 */
export function dayTimes({ workbook, tables }: ReadTables): readonly CallAndWrap[] {
  return [...tables.filter(({ kind }) => kind === "day").flatMap(rowsOf), ...workbook.sheets.flatMap(notesOn)];
}

function rowsOf(table: SheetTable): readonly CallAndWrap[] {
  const cellOf = (row: number, field: string): unknown => {
    const column = table.columnOf[field];
    return column === undefined ? null : table.cells[row]?.[column];
  };
  return table.dataRows.flatMap((row) => {
    const call = timeIn(cellOf(row, "call"));
    if (call === null) return [];
    const at = placeOf(table, row, ["call"]);
    return [
      { date: dayIn(cellOf(row, "date")), call, wrap: timeIn(cellOf(row, "wrap")), at, sheetName: table.sheetName },
    ];
  });
}

function notesOn(sheet: SheetSnapshot): readonly CallAndWrap[] {
  const found = new Map<number, { date: number | null; wrap: number | null; call: number | null; at: CellPosition }>();
  for (const { label, value, at } of sheetNotes(sheet)) {
    const field = readHeading("day", label)?.readings[0]?.field;
    if (field !== "date" && field !== "call" && field !== "wrap") continue;
    // What stands in one column belongs together.
    let notes = found.get(at.column);
    if (notes === undefined) found.set(at.column, (notes = { date: null, wrap: null, call: null, at }));
    if (field === "date") notes.date ??= dayIn(value);
    if (field === "wrap") notes.wrap ??= timeIn(value);
    if (field === "call" && notes.call === null) {
      notes.call = timeIn(value);
      notes.at = at;
    }
  }
  return [...found.values()].flatMap(({ date, wrap, call, at }) =>
    call === null ? [] : [{ date, call, wrap, at, sheetName: sheet.name }],
  );
}

function dayIn(raw: unknown): number | null {
  const day = readDate(raw, "");
  return day.ok ? day.value : null;
}

function timeIn(raw: unknown): number | null {
  if (raw === 0) return null;
  const time = readTimeOfDay(raw, "");
  return time.ok ? time.value : null;
}
