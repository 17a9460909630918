import { dateFields } from "./dateFields";
import { FIRST_LIKELY_DAY } from "./FIRST_LIKELY_DAY";
import { isDayNote } from "./isDayNote";
import { isFilledCell } from "./isFilledCell";
import { isTotalsRow } from "./isTotalsRow";
import { readCell } from "./readCell";
import type { TableKind } from "./tableKind";

/** A row that may say total begins so; the rest of the row is read only then. */
const MAY_SAY_TOTAL = /^\W*(?:grand|sub|sous|tot|su[bm]|som|gesamt|zwischen|insges)/i;

/**
 * The rows below the heading row that hold data, read only until their first filled cell.
 *
 * Passed over: blank rows, rows that repeat the headings, rows of totals that say so, notes of the day ("Call", 08:00), and at
 * the bottom one row of sums alone.
 */
export function findDataRows(
  cells: readonly (readonly unknown[])[],
  headingRow: number,
  headings: readonly string[],
  kind: TableKind,
  columnOf: Readonly<Partial<Record<string, number>>>,
): number[] {
  const known = Object.values(columnOf) as number[];
  const others = headings.map((_, column) => column).filter((column) => !known.includes(column));
  // The names of a row stand first in the vocabulary, so most rows are settled by one cell.
  const columns = [...known, ...others];
  const trimmed = headings.map((heading) => heading.trim());
  const dayField = (dateFields[kind] ?? []).find((field) => columnOf[field] !== undefined);
  const dayColumn = dayField === undefined ? -1 : columnOf[dayField]!;
  const found: number[] = [];
  for (let row = headingRow + 1; row < cells.length; row += 1) {
    const held = cells[row]!;
    // No row of headings and no row of totals has a day in it, so where one stands nothing more need be read.
    const day = dayColumn < 0 ? null : held[dayColumn];
    if (typeof day === "number" && day >= FIRST_LIKELY_DAY) {
      found.push(row);
      continue;
    }
    let at = 0;
    while (at < columns.length && !isFilledCell(held[columns[at]!])) at += 1;
    if (at === columns.length) continue;
    const first = held[columns[at]!];
    if (typeof first === "string") {
      if (first.trim() === trimmed[columns[at]!] && repeatsHeadings(held, headings)) continue;
      if (first.length <= 40 && MAY_SAY_TOTAL.test(first) && isTotalsRow(held, kind, columnOf) === "says so") continue;
      if (isDayNote(held)) continue;
    }
    found.push(row);
  }
  let sumsSeen = false;
  while (found.length > 1) {
    const sign = isTotalsRow(cells[found.at(-1)!]!, kind, columnOf);
    if (sign === null || (sign === "sums alone" && sumsSeen)) break;
    sumsSeen ||= sign === "sums alone";
    found.pop();
  }
  return found;
}

function repeatsHeadings(row: readonly unknown[], headings: readonly string[]): boolean {
  return headings.every((heading, column) => {
    const cell = readCell(row[column]);
    return heading.trim() === "" || (typeof cell === "string" && cell.trim() === heading.trim());
  });
}
