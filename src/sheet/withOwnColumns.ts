import { fail } from "../domain/fail";
import type { UnreadFields } from "../domain/unreadFields";
import type { ColumnFormat, ResultCell, ResultTable } from "../domain/resultTable";
import { dateFields } from "./dateFields";
import { meaningfulZeroFields } from "./meaningfulZeroFields";
import { readCell } from "./readCell";
import type { Table } from "./table";

/** One row of a table to show, and the fields of it that cannot be read though the result depends on them. */
interface PickedRow {
  /** Index of the row in the table's cells. */
  readonly row: number;
  readonly unread?: UnreadFields;
}

/** A column that a function adds behind the table's own. */
interface AddedColumn<R extends PickedRow> {
  readonly heading: string;
  readonly format: ColumnFormat;
  readonly cell: (picked: R) => ResultCell;
}

/**
 * Some rows of a table with their own columns as typed, and behind them the columns a function adds.
 *
 * Columns without a heading at either edge of the range are left out when they are empty, so that whole
 * columns may be passed. Date columns keep a date format, blank cells stay blank (also sent as 0, where a 0 says nothing), an error value in a cell stays one,
 * and a field that cannot be read has its problem in its own cell.
 */
export function withOwnColumns<R extends PickedRow>(
  table: Table,
  picked: readonly R[],
  added: readonly AddedColumn<R>[],
): ResultTable {
  const headings = ownHeadings(table);
  const { first, end } = ownColumns(table, headings);
  const fieldOf = new Map(Object.entries(table.columnOf).map(([field, column]) => [column, field]));
  const formats: ColumnFormat[] = [];
  const zeroIsBlank: (boolean | null)[] = [];
  for (let column = first; column < end; column++) {
    const field = fieldOf.get(column);
    formats.push(field !== undefined && dateFields[table.kind]?.includes(field) ? "date" : "as is");
    zeroIsBlank.push(field === undefined ? null : !meaningfulZeroFields.has(field));
  }
  const isBlankZero = (place: number): boolean => (zeroIsBlank[place] ??= holdsNoFigure(table, first + place));
  const ownCount = end - first;
  // Filled in the order of the sheet, since going to and fro in a large table takes three times as long.
  const placeOfRow = new Int32Array(table.cells.length).fill(-1);
  for (let place = 0; place < picked.length; place++) placeOfRow[picked[place]!.row] = place;
  const rows = new Array<ResultCell[]>(picked.length);
  for (let row = 0; row < placeOfRow.length; row++) {
    const rank = placeOfRow[row]!;
    if (rank < 0) continue;
    const shown = picked[rank]!;
    const cells = table.cells[row]!;
    const result = new Array<ResultCell>(ownCount + added.length);
    for (let place = 0; place < ownCount; place++) {
      const raw = cells[first + place];
      if (typeof raw === "number") result[place] = raw === 0 && isBlankZero(place) ? null : raw;
      else if (typeof raw === "string") result[place] = raw === "" ? null : raw;
      else if (raw === null) result[place] = null;
      else {
        const cell = ownCell(raw, table, row, first + place);
        result[place] = cell === 0 && isBlankZero(place) ? null : cell;
      }
    }
    for (let place = 0; place < added.length; place++) result[ownCount + place] = added[place]!.cell(shown);
    for (const field in shown.unread) {
      const column = table.columnOf[field];
      if (column !== undefined) result[column - first] = shown.unread[field]!;
    }
    rows[rank] = result;
  }
  return {
    headings: [...headings.slice(first, end), ...added.map(({ heading }) => heading)],
    formats: [...formats, ...added.map(({ format }) => format)],
    rows,
  };
}

function ownCell(raw: unknown, table: Table, row: number, column: number): ResultCell {
  const cell = readCell(raw);
  if (cell === null || typeof cell !== "object") return cell;
  const outcome = fail("error-in-cell", {
    argument: `${table.headings[column] ?? ""}, row ${row + 1}`,
    given: cell.error,
  });
  return outcome.ok ? null : outcome.problem;
}

/** The headings as typed, those that are numbers (a year, a size) too. */
function ownHeadings(table: Table): readonly string[] {
  return table.headings.map((heading, column) => {
    const cell = heading === "" ? readCell(table.cells[table.headingRow]?.[column]) : heading;
    return typeof cell === "number" && cell !== 0 ? String(cell) : heading;
  });
}

/** Whether a column that is not understood has no number but 0, so that its zeros are blank cells as some hosts send them. */
function holdsNoFigure(table: Table, column: number): boolean {
  return !table.dataRows.some((row) => {
    const cell = readCell(table.cells[row]![column]);
    return typeof cell === "number" && cell !== 0;
  });
}

function ownColumns(table: Table, headings: readonly string[]): { first: number; end: number } {
  const isEmpty = (column: number): boolean =>
    headings[column]!.trim() === "" &&
    table.dataRows.every((row) => {
      const cell = readCell(table.cells[row]![column]);
      return cell === null || cell === 0;
    });
  let first = 0;
  let end = headings.length;
  while (end > first && isEmpty(end - 1)) end--;
  while (first < end && isEmpty(first)) first++;
  return { first, end };
}
