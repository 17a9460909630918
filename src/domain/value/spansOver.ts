import type { Problem } from "../problem";
import type { ValueStep } from "./valueStep";

/** Days in a row on which more is held than is covered; both ends count. Money in ten-thousandths. */
export interface SpanOver {
  readonly from: number;
  /** null where it stays so. */
  readonly until: number | null;
  readonly highest: number;
  /** The most by which the cover is passed. */
  readonly overBy: number;
  /** Why it cannot be told how much that is. */
  readonly problem: Problem | null;
}

/**
 * The unbroken spans of days on which more is held than the cover of the day, each as long as it can be; equal is not over.
 *
 * `coverOn` gives what is covered on the day a step begins and until the next, so a cover that changes needs a step on the day it does.
 */
export function spansOver(steps: readonly ValueStep[], coverOn: (day: number) => number): readonly SpanOver[] {
  const spans: SpanOver[] = [];
  const overBy = (step: ValueStep): number => step.value - coverOn(step.day);
  // Figures too large to add leave no number behind, which is no more covered than a large one.
  const isOver = (step: ValueStep): boolean => !(overBy(step) <= 0);
  let place = 0;
  while (place < steps.length) {
    if (!isOver(steps[place]!)) {
      place++;
      continue;
    }
    const from = steps[place]!.day;
    let highest = 0;
    let most = 0;
    let problem: Problem | null = null;
    for (; place < steps.length && isOver(steps[place]!); place++) {
      const step = steps[place]!;
      highest = Math.max(highest, step.value);
      most = Math.max(most, overBy(step));
      problem ??= step.piecesProblem ?? step.valueProblem;
    }
    spans.push({ from, until: place < steps.length ? steps[place]!.day - 1 : null, highest, overBy: most, problem });
  }
  return spans;
}
