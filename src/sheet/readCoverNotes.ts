import { succeed } from "../domain/succeed";
import type { CoverNote } from "./coverNote";
import type { CellPosition } from "./cellPosition";
import type { NotedCell } from "./notedCell";
import { cellName } from "./cellName";
import { dayAt } from "./dayAt";
import { readCell } from "./readCell";
import { readCoverLimit } from "./readCoverLimit";
import { readHeading } from "./readHeading";
import { sheetNotes } from "./sheetNotes";
import type { SheetSnapshot } from "./sheetSnapshot";
import type { SheetTable } from "./sheetTable";
import { tableAt } from "./tableAt";

/**
 * What the workbook says of its cover: the rows of its day tables, each for its own day or for every day where it names none, and notes
 * beside the tables for every day ("Insurance limit, all pieces", 120000; "Insurance limit, one piece", 5000).
 *
 * A row whose day cannot be read is passed over, and so is a word beside a text without a figure ("Cover", the name of a magazine's).
 */
export function readCoverNotes(sheets: readonly SheetSnapshot[], tables: readonly SheetTable[]): readonly CoverNote[] {
  const inRows = tables
    .filter(({ kind }) => kind === "day")
    .flatMap((table) => [...coversOfRows(table, "cover"), ...coversOfRows(table, "pieceCover")]);
  return [...inRows, ...sheets.flatMap((sheet) => coversBeside(sheet, tables))];
}

const COVERS = { cover: "all", pieceCover: "one" } as const;
type CoverField = keyof typeof COVERS;

function coversOfRows(table: SheetTable, field: CoverField): readonly CoverNote[] {
  const column = table.columnOf[field];
  if (column === undefined) return [];
  return table.dataRows.flatMap((row) => {
    const day = dayAt(table, row, table.columnOf["date"] ?? -1);
    if (typeof day === "object" && day !== null) return [];
    const noted = {
      at: { sheetId: table.sheetId, row: table.firstRow + row, column: table.firstColumn + column },
      sheetName: table.sheetName,
      heading: table.headings[column] ?? "",
      raw: readCell(table.cells[row]?.[column]),
    };
    return coverNote(noted, COVERS[field], day, table.hintOf?.[field]?.currency ?? null);
  });
}

function coversBeside(sheet: SheetSnapshot, tables: readonly SheetTable[]): readonly CoverNote[] {
  return sheetNotes(sheet).flatMap(({ label, value, at }) => {
    if (typeof value === "boolean" || (typeof value === "string" && !/\d/.test(value))) return [];
    const meaning = readHeading("day", label);
    const field = meaning?.readings[0]?.field;
    if (meaning === null || (field !== "cover" && field !== "pieceCover") || isOfTable(at, tables)) return [];
    const noted = { at, sheetName: sheet.name, heading: label, raw: value };
    return coverNote(noted, COVERS[field], null, meaning.hint.currency);
  });
}

/** A table may run on over notes below it, which are none of its rows. */
function isOfTable(at: CellPosition, tables: readonly SheetTable[]): boolean {
  const table = tableAt(at, tables);
  const row = at.row - (table?.firstRow ?? 0);
  return table !== undefined && (row === table.headingRow || table.dataRows.includes(row));
}

/** A 0 is how some hosts send a blank cell. */
function coverNote(
  noted: NotedCell,
  covers: CoverNote["covers"],
  day: number | null,
  currency: string | null,
): CoverNote[] {
  const argument = `${noted.heading.trim()} ${cellName(noted.at.row, noted.at.column)}`;
  const limit = noted.raw === 0 ? succeed(null) : readCoverLimit(noted.raw, argument);
  if (!limit.ok) return [{ ...noted, covers, day, limit }];
  if (limit.value === null) return [];
  return [{ ...noted, covers, day, limit: succeed({ ...limit.value, currency: limit.value.currency ?? currency }) }];
}
