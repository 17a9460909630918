import type { Outcome } from "../../../src/domain/outcome";
import { sayProblem } from "../../../src/domain/wording";
import type { Cell } from "../../../src/sheet/cell";
import type { CellEdit } from "../../../src/sheet/cellEdit";
import type { SheetPort } from "../../../src/sheet/SheetPort";
import type { SheetSnapshot } from "../../../src/sheet/sheetSnapshot";

export function same(actual: unknown, expected: unknown, what: string): void {
  const [a, b] = [JSON.stringify(actual), JSON.stringify(expected)];
  if (a !== b) throw new Error(`${what}: got ${a}, expected ${b}`);
}

export function must<T>(outcome: Outcome<T>, what: string): T {
  if (!outcome.ok) throw new Error(`${what}: ${sayProblem(outcome.problem)}`);
  return outcome.value;
}

export function refused(outcome: Outcome<unknown>, reason: string, part = ""): void {
  if (outcome.ok) throw new Error(`was not refused, expected ${reason}`);
  same(outcome.problem.reason, reason, "the reason of the refusal");
  const sentence = sayProblem(outcome.problem);
  if (!sentence.includes(part)) throw new Error(`the sentence does not name ${part}: ${sentence}`);
}

/** What stands in a cell of a snapshot; outside the used range it is blank. */
export function cellOf(sheet: SheetSnapshot, row: number, column: number): Cell {
  return sheet.values[row - sheet.firstRow]?.[column - sheet.firstColumn] ?? null;
}

export function formulaOf(sheet: SheetSnapshot, row: number, column: number): string | null {
  return sheet.formulas[row - sheet.firstRow]?.[column - sheet.firstColumn] ?? null;
}

export async function read(port: SheetPort, sheetId: string): Promise<SheetSnapshot> {
  return must(await port.readSheet(sheetId), "reading the sheet");
}

export function edit(
  sheetId: string,
  row: number,
  column: number,
  expected: Cell,
  value: Cell,
  more: Partial<CellEdit> = {},
): CellEdit {
  return { at: { sheetId, row, column }, expected, value, ...more };
}

export async function until(what: string, holds: () => boolean | Promise<boolean>, milliseconds = 5000): Promise<void> {
  for (let waited = 0; waited < milliseconds; waited += 20) {
    if (await holds()) return;
    await new Promise((resolve) => setTimeout(resolve, 20));
  }
  throw new Error(`waited ${milliseconds} ms in vain: ${what}`);
}
