import type { Problem } from "../problem";
import type { ValueChange } from "./valueChange";
import type { ValueChanges } from "./valueChanges";
import type { ValueDoubt } from "./valueDoubt";
import type { ValueStep } from "./valueStep";

/**
 * The changes summed up from the first day on: one step for each day on which something changes, in order.
 *
 * A step in doubt carries the problem of the first row that is in doubt there.
 */
export function valueSteps({ byDay, doubts }: Pick<ValueChanges, "byDay" | "doubts">): readonly ValueStep[] {
  const days = new Set(byDay.keys());
  for (const { from, until } of doubts) days.add(from).add(until);
  days.delete(Infinity);
  let pieces = 0;
  let value = 0;
  let unvalued = 0;
  const steps: ValueStep[] = [...days]
    .sort((a, b) => a - b)
    .map((day) => {
      const change: ValueChange | undefined = byDay.get(day);
      if (change !== undefined) {
        pieces += change.pieces;
        value += change.value;
        unvalued += change.unvalued;
      }
      return { day, pieces, value, unvalued, piecesProblem: null, valueProblem: null };
    });
  setFirst(steps, doubts, true, "piecesProblem");
  setFirst(steps, doubts, false, "valueProblem");
  return steps;
}

/** Gives each step the first doubt that covers it. Steps that have one are leapt over, so that many doubts do not cost their product with the steps. */
function setFirst(
  steps: readonly ValueStep[],
  doubts: readonly ValueDoubt[],
  ofPieces: boolean,
  field: "piecesProblem" | "valueProblem",
): void {
  const wanted = doubts.filter((doubt) => doubt.ofPieces === ofPieces);
  if (wanted.length === 0) return;
  const placeOf = new Map<number, number>(steps.map(({ day }, place) => [day, place]));
  const nextFree = Int32Array.from({ length: steps.length + 1 }, (_, place) => place);
  const freeFrom = (place: number): number => {
    while (nextFree[place] !== place) {
      nextFree[place] = nextFree[nextFree[place]!]!;
      place = nextFree[place]!;
    }
    return place;
  };
  for (const { from, until, problem } of wanted) {
    const end = placeOf.get(until) ?? steps.length;
    for (let place = freeFrom(placeOf.get(from)!); place < end; place = freeFrom(place)) {
      (steps[place] as Record<typeof field, Problem | null>)[field] = problem;
      nextFree[place] = place + 1;
    }
  }
}
