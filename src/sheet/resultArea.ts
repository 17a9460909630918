import type { Cell } from "./cell";
import { isFilledCell } from "./isFilledCell";

const OWN_FUNCTION = /^=[@+]?(?:_xldudf_TACK_|TACK\.)/i;

/**
 * How far the result of a formula reaches that begins in this row and shows its own headings, or null where none does.
 *
 * Such a result is a formula whose right-hand neighbour holds text that nobody typed and no formula gave: it spills. It reaches
 * down to the next row that is blank below it.
 */
export function resultArea(
  formulas: readonly (readonly (string | null)[])[],
  values: readonly (readonly Cell[])[],
  row: number,
  from: number,
  until: number,
): { readonly rowCount: number } | null {
  let anchor = from;
  while (anchor < until && !isFilledCell(values[row]![anchor])) anchor += 1;
  const formula = formulas[row]?.[anchor] ?? null;
  if (formula === null || typeof values[row]![anchor] !== "string") return null;
  const next = anchor + 1;
  const spills = next < until && typeof values[row]![next] === "string" && (formulas[row]![next] ?? null) === null;
  // A heading row alone can be one column wide; a text from one of our functions below which nothing stands is no table either.
  if (!spills && !OWN_FUNCTION.test(formula)) return null;
  let rowCount = 1;
  while (
    row + rowCount < values.length &&
    isFilledCell(values[row + rowCount]![anchor]) &&
    (formulas[row + rowCount]?.[anchor] ?? null) === null
  ) {
    rowCount += 1;
  }
  return { rowCount };
}
