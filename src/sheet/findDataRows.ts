import { isFilledCell } from "./isFilledCell";
import { isTotalsRow } from "./isTotalsRow";
import { readCell } from "./readCell";
import type { TableKind } from "./tableKind";

/** A row that may say total begins so; the rest of the row is read only then. */
const MAY_SAY_TOTAL = /^\W*(?:grand|sub|sous|tot|su[bm]|som|gesamt|zwischen|insges)/i;

/**
 * The rows below the heading row that hold data, read only until their first filled cell.
 *
 * Passed over: blank rows, rows that repeat the headings, rows of totals that say so, and at the bottom one of sums alone.
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
  const found: number[] = [];
  for (let row = headingRow + 1; row < cells.length; row += 1) {
    const held = cells[row]!;
    let at = 0;
    while (at < columns.length && !isFilledCell(held[columns[at]!])) at += 1;
    if (at === columns.length) continue;
    const first = held[columns[at]!];
    if (typeof first === "string") {
      const heading = trimmed[columns[at]!]!;
      if (mayBe(first, heading) && first.trim() === heading && repeatsHeadings(held, headings)) continue;
      const saysTotal = mayBeginTotal(first) && first.length <= 40 && MAY_SAY_TOTAL.test(first);
      if (saysTotal && isTotalsRow(held, kind, columnOf) === "says so") continue;
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

/** Whether a text may be a heading but for spaces around it, by length and first character: quicker than trimming every cell. */
function mayBe(text: string, heading: string): boolean {
  const code = text.charCodeAt(0);
  return text.length >= heading.length && (code === heading.charCodeAt(0) || code <= 0x20 || code >= 0x7f);
}

/** Whether by its first character a text may match MAY_SAY_TOTAL: any but a digit and the letters no such word begins with. */
function mayBeginTotal(text: string): boolean {
  const code = text.charCodeAt(0);
  const letter = code | 0x20;
  const isDigit = code >= 0x30 && code <= 0x39;
  const isLetter = code >= 0x41 && letter >= 0x61 && letter <= 0x7a;
  return !isDigit && (!isLetter || "gstzi".includes(String.fromCharCode(letter)));
}

function repeatsHeadings(row: readonly unknown[], headings: readonly string[]): boolean {
  return headings.every((heading, column) => {
    const cell = readCell(row[column]);
    return heading.trim() === "" || (typeof cell === "string" && cell.trim() === heading.trim());
  });
}
