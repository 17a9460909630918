import type { PlannedLook } from "./plannedDay";

/** From when a look needs its pieces, as a fraction of a day: the start of its change, or of its shot where it has none. */
export function neededFrom({ steps, shootFrom }: PlannedLook): number {
  return steps.find(({ kind }) => kind === "change")?.from ?? shootFrom;
}
