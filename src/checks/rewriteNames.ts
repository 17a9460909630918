import type { Repair } from "./finding";
import { isTyped } from "./isTyped";
import type { NameTally } from "./nameTally";
import { replaceCell } from "./replaceCell";
import { sayCount } from "./sayCount";

/** The repair that writes one name in every typed cell of a spelling; null where formulas give it. */
export function rewriteNames(tally: NameTally, field: string, name: string): Repair | null {
  const typed = tally.rows.filter((row) => isTyped(row, field));
  if (typed.length === 0) return null;
  const where = tally.rows.length === 1 ? "" : ` in ${sayCount(typed.length, "row")}`;
  return { label: `Write "${name}"${where}`, edits: typed.map((row) => replaceCell(row, field, name)) };
}
