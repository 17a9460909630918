import { serialFromYmd } from "../../domain/dates/serialFromYmd";
import { areaOfReference } from "../../sheet/areaOfReference";
import type { Cell } from "../../sheet/cell";
import type { CellPosition } from "../../sheet/cellPosition";
import type { SheetSnapshot, TableArea, WorkbookSnapshot } from "../../sheet/sheetSnapshot";

/** What a reference is looked up in. */
export interface ReferenceSurroundings {
  readonly workbook: WorkbookSnapshot;
  /** The serial day that TODAY() gives. */
  readonly today: number;
  /** Where the formula would stand: its sheet is the one meant without a name, its row is the one of [@Heading]. */
  readonly home: CellPosition | null;
}

type Cells = readonly (readonly Cell[])[];

/**
 * The cells that a reference names, as last read; a plain value for TODAY(), DATE(y,m,d) and TIME(h,m,s); null for anything
 * else, which only the workbook's own calculation can tell.
 *
 * Read: Loans, Loans[], Loans[#All], Loans[#Data], Loans[#Headers], Loans[Date out], Loans[@[Date out]], A1, $A$1:B9, A:C,
 * Sheet!A1 and 'My sheet'!A1.
 */
export function evaluateReference(expression: string, surroundings: ReferenceSurroundings): Cells | number | null {
  const text = expression.trim();
  return plainCall(text, surroundings.today) ?? tableCells(text, surroundings) ?? sheetCells(text, surroundings);
}

function plainCall(text: string, today: number): number | null {
  if (/^TODAY\(\s*\)$/i.test(text)) return today;
  const call = /^(DATE|TIME)\(\s*(\d+)\s*,\s*(\d+)\s*,\s*(\d+)\s*\)$/i.exec(text);
  if (call === null) return null;
  const [first, second, third] = call.slice(2).map(Number) as [number, number, number];
  if (call[1]!.toUpperCase() === "TIME") return (first * 3600 + second * 60 + third) / 86_400;
  return serialFromYmd(first, second, third);
}

function tableCells(text: string, { workbook, home }: ReferenceSurroundings): Cells | null {
  const named = /^([\p{L}_\\][\p{L}\p{N}_.\\]*)(?:\[([\s\S]*)\])?$/u.exec(text);
  if (named === null) return null;
  const name = named[1]!.toLowerCase();
  for (const sheet of workbook.sheets) {
    const table = sheet.tables.find((area) => area.name.toLowerCase() === name);
    if (table !== undefined) return partOf(sheet, table, named[2]?.trim() ?? "", home);
  }
  return null;
}

function partOf(sheet: SheetSnapshot, table: TableArea, part: string, home: CellPosition | null): Cells | null {
  const { row, column, rowCount, columnCount } = table;
  const cut = (fromRow: number, rows: number, fromColumn = column, columns = columnCount): Cells =>
    cellsOf(sheet, fromRow, fromColumn, rows, columns);
  if (/^#all$/i.test(part)) return cut(row, rowCount);
  if (part === "" || /^#data$/i.test(part)) return cut(row + 1, rowCount - 1);
  if (/^#headers$/i.test(part)) return cut(row, 1);
  const isOwnRow = part.startsWith("@");
  const bracketed = /^\[([\s\S]*)\]$/;
  const inside = isOwnRow ? part.slice(1) : part;
  const heading = (bracketed.exec(inside)?.[1] ?? inside).replace(/'(.)/g, "$1");
  const headings = cut(row, 1)[0] ?? [];
  const place = headings.findIndex((cell) => String(cell ?? "").toLowerCase() === heading.toLowerCase());
  if (place < 0) return null;
  if (!isOwnRow) return cut(row + 1, rowCount - 1, column + place, 1);
  const isInRows = home !== null && home.sheetId === sheet.sheetId && home.row > row && home.row < row + rowCount;
  return cut(isInRows ? home.row : row + 1, 1, column + place, 1);
}

function sheetCells(text: string, { workbook, home }: ReferenceSurroundings): Cells | null {
  const parts = /^(?:('(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?([$A-Z0-9:]+)$/iu.exec(text);
  const area = parts === null ? null : areaOfReference(parts[2]!);
  if (parts === null || area === null) return null;
  const name = parts[1]?.replace(/^'|'$/g, "").replace(/''/g, "'").toLowerCase();
  const sheet = workbook.sheets.find((one) =>
    name === undefined ? one.sheetId === home?.sheetId : one.name.toLowerCase() === name,
  );
  if (sheet === undefined) return null;
  // A whole column ends with what is used, as the host itself hands it over to no purpose beyond.
  const usedRows = sheet.firstRow + sheet.values.length;
  const usedColumns = sheet.firstColumn + (sheet.values[0]?.length ?? 0);
  const lastRow = area.endRow - area.startRow > 100_000 ? Math.min(area.endRow, usedRows - 1) : area.endRow;
  const lastColumn =
    area.endColumn - area.startColumn > 1000 ? Math.min(area.endColumn, usedColumns - 1) : area.endColumn;
  const rowCount = Math.max(lastRow - area.startRow + 1, 1);
  const columnCount = Math.max(lastColumn - area.startColumn + 1, 1);
  if (area.endRow < area.startRow || area.endColumn < area.startColumn || rowCount * columnCount > 5_000_000)
    return null;
  return cellsOf(sheet, area.startRow, area.startColumn, rowCount, columnCount);
}

function cellsOf(sheet: SheetSnapshot, row: number, column: number, rowCount: number, columnCount: number): Cells {
  return Array.from({ length: rowCount }, (_, r) => {
    const held = sheet.values[row + r - sheet.firstRow] ?? [];
    return Array.from({ length: columnCount }, (__, c) => held[column + c - sheet.firstColumn] ?? null);
  });
}
