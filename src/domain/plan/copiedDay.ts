import type { DayState } from "./dayState";
import type { DayWork } from "./dayWork";
import { openDay } from "./openDay";
import { setDay } from "./setDay";

/** The same state again, for itself; like `setDay` it leaves behind who served which look last. */
export function copiedDay(work: DayWork, state: DayState): DayState {
  const copy = openDay(work);
  setDay(copy, state);
  return copy;
}
