import type { Outcome } from "../domain/outcome";
import type { DayNotes } from "./dayNotes";
import type { NotedCell } from "./notedCell";
import type { NotedFigure } from "./notedFigure";
import { readCell } from "./readCell";
import { readDate } from "./readDate";
import { readHeading } from "./readHeading";
import { readHours } from "./readHours";
import { readQuantity } from "./readQuantity";
import { readTimeOfDay } from "./readTimeOfDay";
import { sheetNotes } from "./sheetNotes";
import type { SheetSnapshot } from "./sheetSnapshot";
import type { SheetTable } from "./sheetTable";

const READER_OF = {
  call: readTimeOfDay,
  wrap: readTimeOfDay,
  meal: readHours,
  dressers: readQuantity,
  chairs: readQuantity,
} satisfies Readonly<Record<string, (raw: unknown, argument: string) => Outcome<number | null>>>;

type Field = keyof typeof READER_OF;

/** Beside the tables only these are notes: "chairs" with a figure beside it is the list of people. */
const NOTED = ["date", "call", "wrap"];

/**
 * What the workbook says of its shoot days: the rows of its day tables, and notes with the word in one cell and the
 * value in the cell to its right ("Call", 08:00), a "Date" among the same notes giving the day.
 */
export function readDayNotes(sheets: readonly SheetSnapshot[], tables: readonly SheetTable[]): readonly DayNotes[] {
  return [...tables.filter(({ kind }) => kind === "day").flatMap(notesOfRows), ...sheets.flatMap(notesOn)];
}

function notesOfRows(table: SheetTable): readonly DayNotes[] {
  return table.dataRows.flatMap((row) => {
    const cellOf = (field: string): NotedCell | null => {
      const column = table.columnOf[field];
      if (column === undefined) return null;
      return {
        at: { sheetId: table.sheetId, row: table.firstRow + row, column: table.firstColumn + column },
        sheetName: table.sheetName,
        heading: table.headings[column] ?? "",
        raw: readCell(table.cells[row]?.[column]),
      };
    };
    return notesFrom(cellOf);
  });
}

function notesOn(sheet: SheetSnapshot): readonly DayNotes[] {
  // What stands in one column belongs together.
  const columns = new Map<number, Map<string, NotedCell>>();
  for (const { label, value, at } of sheetNotes(sheet)) {
    const field = readHeading("day", label)?.readings[0]?.field;
    if (field === undefined || !NOTED.includes(field)) continue;
    let notes = columns.get(at.column);
    if (notes === undefined) columns.set(at.column, (notes = new Map()));
    const noted = { at, sheetName: sheet.name, heading: label, raw: value };
    // "Date" and "Call" may be words of a sentence: the first that can be read is meant.
    if (!notes.has(field) && isReadable(field, noted)) notes.set(field, noted);
  }
  return [...columns.values()].flatMap((notes) => notesFrom((field) => notes.get(field) ?? null));
}

function isReadable(field: string, cell: NotedCell): boolean {
  return field === "date" ? dayIn(cell) !== null : figureIn(field as Field, cell) !== null;
}

function notesFrom(cellOf: (field: string) => NotedCell | null): readonly DayNotes[] {
  const figure = (field: Field): NotedFigure | null => figureIn(field, cellOf(field));
  const notes = {
    date: dayIn(cellOf("date")),
    call: figure("call"),
    wrap: figure("wrap"),
    meal: figure("meal"),
    dressers: figure("dressers"),
    chairs: figure("chairs"),
  };
  const { call, wrap, meal, dressers, chairs } = notes;
  return [call, wrap, meal, dressers, chairs].some((said) => said !== null) ? [notes] : [];
}

function dayIn(cell: NotedCell | null): number | null {
  const day = readDate(cell?.raw, "");
  return day.ok ? day.value : null;
}

/** A 0 is how some hosts send a blank cell. */
function figureIn(field: Field, cell: NotedCell | null): NotedFigure | null {
  if (cell === null || cell.raw === 0) return null;
  const figure = READER_OF[field](cell.raw, "");
  return figure.ok && figure.value !== null && (field === "call" || field === "wrap" || figure.value > 0)
    ? { ...cell, value: figure.value }
    : null;
}
