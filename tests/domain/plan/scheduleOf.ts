import type { DaySchedule } from "../../../src/domain/plan/daySchedule";

/** A schedule of which only the times of its steps and its meal are said. */
export function scheduleOf(
  steps: readonly (readonly [number, number])[],
  meal: DaySchedule["meal"] = null,
): DaySchedule {
  const nothing = steps.map(() => -1);
  return {
    fromSeconds: steps.map(([from]) => from),
    untilSeconds: steps.map(([, until]) => until),
    waitKind: steps.map(() => "call"),
    waitLook: nothing,
    waitTalent: nothing,
    station: nothing,
    meal,
    endSeconds: 0,
  };
}
