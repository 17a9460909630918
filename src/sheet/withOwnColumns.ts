import { fail } from "../domain/fail";
import type { ColumnFormat, ResultCell, ResultTable } from "../domain/resultTable";
import { dateFields } from "./dateFields";
import { meaningfulZeroFields } from "./meaningfulZeroFields";
import { readCell } from "./readCell";
import type { Table } from "./table";

/** One row of a table and what a function adds at its end. */
interface PickedRow {
  /** Index of the row in the table's cells. */
  readonly row: number;
  readonly added: readonly ResultCell[];
}

/** A column that a function adds behind the table's own. */
interface AddedColumn {
  readonly heading: string;
  readonly format: ColumnFormat;
}

/**
 * Some rows of a table with their own columns as typed, and behind them the columns a function adds.
 *
 * Columns without a heading at either edge of the range are left out when they are empty, so that whole
 * columns may be passed. Date columns keep a date format, blank cells stay blank, and an error value in a cell stays one.
 */
export function withOwnColumns(table: Table, picked: readonly PickedRow[], added: readonly AddedColumn[]): ResultTable {
  const { first, end } = ownColumns(table);
  const fieldOf = new Map(Object.entries(table.columnOf).map(([field, column]) => [column, field]));
  const formats: ColumnFormat[] = [];
  const zeroIsBlank: boolean[] = [];
  for (let column = first; column < end; column++) {
    const field = fieldOf.get(column);
    formats.push(field !== undefined && dateFields[table.kind]?.includes(field) ? "date" : "as is");
    zeroIsBlank.push(field !== undefined && !meaningfulZeroFields.has(field));
  }
  const ownCount = end - first;
  const rows = picked.map(({ row, added: last }) => {
    const cells = table.cells[row]!;
    const result = new Array<ResultCell>(ownCount + last.length);
    for (let place = 0; place < ownCount; place++) {
      const raw = cells[first + place];
      if (typeof raw === "number") result[place] = raw === 0 && zeroIsBlank[place] ? null : raw;
      else if (typeof raw === "string") result[place] = raw === "" ? null : raw;
      else result[place] = raw === null ? null : ownCell(raw, table, row, first + place, zeroIsBlank[place]!);
    }
    for (let place = 0; place < last.length; place++) result[ownCount + place] = last[place]!;
    return result;
  });
  return {
    headings: [...table.headings.slice(first, end), ...added.map(({ heading }) => heading)],
    formats: [...formats, ...added.map(({ format }) => format)],
    rows,
  };
}

function ownCell(raw: unknown, table: Table, row: number, column: number, zeroIsBlank: boolean): ResultCell {
  const cell = readCell(raw);
  if (cell === 0 && zeroIsBlank) return null;
  if (cell === null || typeof cell !== "object") return cell;
  const outcome = fail("error-in-cell", {
    argument: `${table.headings[column] ?? ""}, row ${row + 1}`,
    given: cell.error,
  });
  return outcome.ok ? null : outcome.problem;
}

function ownColumns(table: Table): { first: number; end: number } {
  const isEmpty = (column: number): boolean =>
    (table.headings[column] ?? "").trim() === "" &&
    table.dataRows.every((row) => readCell(table.cells[row]![column]) === null);
  let first = 0;
  let end = table.headings.length;
  while (end > first && isEmpty(end - 1)) end--;
  while (first < end && isEmpty(first)) first++;
  return { first, end };
}
