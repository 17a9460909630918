import { readFileSync } from "node:fs";
import { Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { due } from "../../src/functions/bindings/due";
import type { Cell } from "../../src/sheet/cell";
import { readCell } from "../../src/sheet/readCell";
import type { SheetSnapshot, TableArea, WorkbookSnapshot } from "../../src/sheet/sheetSnapshot";

/** Sheet row (from 0) and column of the sample's tables: every heading row stands in row 4. */
const HEADINGS_ROW = 3;

/**
 * The sample workbook as a host's snapshot, read from its file by the spreadsheet library. Its formulas are not
 * calculated by an engine: a due date is asked of the function itself, any other formula that is read finds nothing.
 */
export async function sampleWorkbook(): Promise<WorkbookSnapshot> {
  const book = new Workbook();
  await book.xlsx.load(readFileSync("sample-workbooks/two-day-shoot.xlsx"));
  const job = book.getWorksheet("Job")!;
  const lastShootDay = plain(job, 5, 2);
  const closed = [5, 6, 7].map((row) => [plain(job, row, 4)]);
  return {
    name: "two-day-shoot.xlsx",
    dateSystem: 1900,
    sheets: book.worksheets.map((sheet) => snapshotOf(sheet, (row) => dueIn(sheet, row, lastShootDay, closed))),
  };
}

function snapshotOf(sheet: Worksheet, dueOn: (row: number) => Cell): SheetSnapshot {
  const [rowCount, columnCount] = [sheet.rowCount, sheet.columnCount];
  const grid = <T>(pick: (row: number, column: number) => T): T[][] =>
    Array.from({ length: rowCount }, (_, r) => Array.from({ length: columnCount }, (_, c) => pick(r + 1, c + 1)));
  return {
    sheetId: sheet.name,
    name: sheet.name,
    visible: true,
    isProtected: false,
    firstRow: 0,
    firstColumn: 0,
    values: grid((row, column) => {
      const formula = formulaIn(sheet, row, column);
      if (formula === null) return readCell(plain(sheet, row, column));
      return formula.startsWith("=TACK.DUE(") ? dueOn(row) : { error: "#N/A" };
    }),
    formulas: grid((row, column) => formulaIn(sheet, row, column)),
    tables: Object.values(sheet.tables as unknown as Record<string, { table: { name: string; tableRef: string } }>).map(
      ({ table }) => areaOf(table.name, table.tableRef),
    ),
  };
}

function areaOf(name: string, reference: string): TableArea {
  const [, left, top, right, bottom] = /^\$?([A-Z]+)\$?(\d+):\$?([A-Z]+)\$?(\d+)$/.exec(reference)!;
  const column = (letters: string): number =>
    [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0);
  return {
    name,
    row: Number(top) - 1,
    column: column(left!) - 1,
    rowCount: Number(bottom) - Number(top) + 1,
    columnCount: column(right!) - column(left!) + 1,
  };
}

function formulaIn(sheet: Worksheet, row: number, column: number): string | null {
  const formula = sheet.getCell(row, column).formula as string | undefined;
  return formula ? `=${formula.replace(/_xldudf_TACK_/g, "TACK.").replace(/_xlfn\.|_xlws\./g, "")}` : null;
}

function plain(sheet: Worksheet, row: number, column: number): unknown {
  const held = sheet.getCell(row, column).value as unknown;
  return held instanceof Date ? held.getTime() / 86400000 + 25569 : held;
}

function dueIn(sheet: Worksheet, row: number, lastShootDay: unknown, closed: unknown[][]): Cell {
  const heading = (name: string): number =>
    Array.from({ length: sheet.columnCount }, (_, c) => c + 1).find((c) => plain(sheet, HEADINGS_ROW + 1, c) === name)!;
  try {
    const day = due(plain(sheet, row, heading("Date out")), plain(sheet, row, heading("Terms")), lastShootDay, closed);
    return readCell(day);
  } catch {
    return { error: "#VALUE!" };
  }
}
