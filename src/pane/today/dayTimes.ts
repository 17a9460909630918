import { readDate } from "../../sheet/readDate";
import { readHeading } from "../../sheet/readHeading";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import type { SheetSnapshot } from "../../sheet/sheetSnapshot";
import type { SheetTable } from "../../sheet/sheetTable";
import type { ReadTables } from "../state/ReadTables";
import type { CallAndWrap } from "./CallAndWrap";
import { placeOf } from "./placeOf";

/** Notes at the head of a sheet stand within these many rows and columns; tables below them are not searched. */
const NOTE_ROWS = 30;
const NOTE_COLUMNS = 12;

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
  const found: CallAndWrap[] = [];
  for (let column = 0; column < NOTE_COLUMNS; column++) {
    let date: number | null = null;
    let wrap: number | null = null;
    let callAt: { readonly row: number; readonly call: number } | null = null;
    for (const [row, cells] of sheet.values.slice(0, NOTE_ROWS).entries()) {
      const label = cells[column];
      const field = typeof label === "string" ? readHeading("day", label)?.readings[0]?.field : undefined;
      const value = cells[column + 1];
      if (field === "date") date ??= dayIn(value);
      if (field === "wrap") wrap ??= timeIn(value);
      const call = field === "call" ? timeIn(value) : null;
      if (call !== null) callAt ??= { row, call };
    }
    if (callAt === null) continue;
    const at = { sheetId: sheet.sheetId, row: sheet.firstRow + callAt.row, column: sheet.firstColumn + column + 1 };
    found.push({ date, call: callAt.call, wrap, at, sheetName: sheet.name });
  }
  return found;
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
