import type { SheetTable } from "../sheet/sheetTable";

/** True when a row of two readings of one table holds the same cells and formulas. */
export function sameRow(before: SheetTable, after: SheetTable, row: number): boolean {
  return sameCells(before.cells[row], after.cells[row]) && sameCells(before.formulas[row], after.formulas[row]);
}

function sameCells(before: readonly unknown[] | undefined, after: readonly unknown[] | undefined): boolean {
  if (before === after) return true;
  if (before === undefined || after === undefined || before.length !== after.length) return false;
  for (let column = 0; column < before.length; column++) {
    const was = before[column];
    const is = after[column];
    if (was !== is && !Object.is(was, is) && !sameError(was, is)) return false;
  }
  return true;
}

// Two readings of a sheet bring two objects for one error.
function sameError(was: unknown, is: unknown): boolean {
  if (typeof was !== "object" || typeof is !== "object" || was === null || is === null) return false;
  const before = (was as { error?: unknown }).error;
  return typeof before === "string" && before === (is as { error?: unknown }).error;
}
