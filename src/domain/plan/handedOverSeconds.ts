import { clearOfMeal } from "./clearOfMeal";
import type { MealSpan } from "./daySchedule";
import type { DayState } from "./dayState";
import type { DayWork, WorkLook } from "./dayWork";

/**
 * When a shared piece is there for that look: the one that wore it last is shot, undressed and has handed it over.
 *
 * Undressing and handing over is done wholly before the meal or wholly after it, like a step. Talents who wear the piece
 * in both looks keep it on. -Infinity where nobody has worn it yet.
 */
export function handedOverSeconds(
  work: DayWork,
  state: DayState,
  look: WorkLook,
  piece: number,
  meal: MealSpan | null,
): number {
  const last = state.pieceLookOf[piece]!;
  if (last < 0) return -Infinity;
  const lengthSeconds = work.looks[last]!.wearers === look.wearers ? 0 : work.handOverSeconds;
  return clearOfMeal(state.pieceUntilSeconds[piece]!, lengthSeconds, meal) + lengthSeconds;
}
