import type { SheetTable } from "../sheet/sheetTable";
import { sameContent } from "./sameContent";

/** True when a row of two readings of one table holds the same cells and formulas. */
export function sameRow(before: SheetTable, after: SheetTable, row: number): boolean {
  return sameCells(before.cells[row], after.cells[row]) && sameCells(before.formulas[row], after.formulas[row]);
}

function sameCells(before: readonly unknown[] | undefined, after: readonly unknown[] | undefined): boolean {
  if (before === after) return true;
  if (before === undefined || after === undefined || before.length !== after.length) return false;
  for (let column = 0; column < before.length; column++) {
    if (!sameContent(before[column], after[column])) return false;
  }
  return true;
}
