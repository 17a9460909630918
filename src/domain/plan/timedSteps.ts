import { STEPS_A_LOOK } from "./daySchedule";
import type { DaySchedule, MealSpan, WaitKind } from "./daySchedule";
import type { DayWork } from "./dayWork";
import { emptyPlacedLook } from "./emptyPlacedLook";
import { openDay } from "./openDay";
import { placeLook } from "./placeLook";

/**
 * Times every step of the day in one pass, look after look in the order given, around a meal that is already placed.
 *
 * `order` names no look twice; steps of looks that it leaves out have no length. Nothing outside is touched, so the
 * same work can be timed in any number of orders.
 */
export function timedSteps(work: DayWork, order: readonly number[], meal: MealSpan | null): DaySchedule {
  const stepCount = work.looks.length * STEPS_A_LOOK;
  const fromSeconds = new Array<number>(stepCount).fill(0);
  const untilSeconds = new Array<number>(stepCount).fill(0);
  const waitKind = new Array<WaitKind>(stepCount).fill("call");
  const waitLook = new Array<number>(stepCount).fill(-1);
  const waitTalent = new Array<number>(stepCount).fill(-1);
  const station = new Array<number>(stepCount).fill(-1);

  const state = openDay(work);
  const placed = emptyPlacedLook();
  for (const index of order) {
    placeLook(work, state, index, meal, placed);
    for (let step = 0; step < STEPS_A_LOOK; step++) {
      const at = index * STEPS_A_LOOK + step;
      fromSeconds[at] = placed.fromSeconds[step]!;
      untilSeconds[at] = placed.untilSeconds[step]!;
      waitKind[at] = placed.waitKind[step]!;
      waitLook[at] = placed.waitLook[step]!;
      waitTalent[at] = placed.waitTalent[step]!;
      station[at] = placed.station[step]!;
    }
  }
  return {
    fromSeconds,
    untilSeconds,
    waitKind,
    waitLook,
    waitTalent,
    station,
    meal,
    endSeconds: state.endSeconds,
  };
}
