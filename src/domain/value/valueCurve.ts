import { fail } from "../fail";
import { isProblem } from "../isProblem";
import type { PieceRows } from "../loans/pieceRows";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import type { ValueChanges } from "./valueChanges";
import { valueChangesOf } from "./valueChangesOf";
import type { ValueStep } from "./valueStep";
import { valueSteps } from "./valueSteps";

/** What is held over time in the one currency that all pieces with a value share; null where they name none. */
interface ValueCurve {
  readonly currency: string | null;
  readonly steps: readonly ValueStep[];
  /** Every row that leaves something in doubt, in the order of the rows. */
  readonly doubts: ValueChanges["doubts"];
}

/**
 * The value of all that is held, step by step, in the one currency of the pieces.
 *
 * Pieces that have a value in two currencies, even on different days, are a problem that names both rows: what is more
 * of two amounts in two currencies cannot be told.
 */
export function valueCurve(pieces: PieceRows, countBackDay: boolean): Outcome<ValueCurve> {
  const all = valueChangesOf(pieces, countBackDay);
  const valued = all.filter(({ firstValuedRow }) => firstValuedRow !== null);
  valued.sort((a, b) => a.firstValuedRow! - b.firstValuedRow!);
  const [first, second] = valued;
  const currency = first?.currency ?? null;
  if (isProblem(currency)) return { ok: false, problem: currency };
  if (second !== undefined) {
    if (isProblem(second.currency)) return { ok: false, problem: second.currency };
    return fail("currencies-mixed", {
      rowNumber: second.firstValuedRow! + 1,
      currency: second.currency,
      firstRowNumber: first!.firstValuedRow! + 1,
      firstCurrency: currency,
    });
  }
  const whole = all.length === 1 ? all[0]! : added(all);
  return succeed({ currency, steps: valueSteps(whole), doubts: whole.doubts });
}

/** One currency's pieces with those that have no value, whatever their currency. */
function added(all: readonly ValueChanges[]): Pick<ValueChanges, "byDay" | "doubts"> {
  const byDay: ValueChanges["byDay"] = new Map();
  for (const changes of all) {
    for (const [day, { pieces, value, unvalued }] of changes.byDay) {
      const sum = byDay.get(day) ?? { pieces: 0, value: 0, unvalued: 0 };
      byDay.set(day, { pieces: sum.pieces + pieces, value: sum.value + value, unvalued: sum.unvalued + unvalued });
    }
  }
  return { byDay, doubts: all.flatMap(({ doubts }) => doubts).sort((a, b) => a.row - b.row) };
}
