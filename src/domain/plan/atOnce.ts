import type { Stepwise } from "./stepwise";

/** What the work comes to, done without a stop. */
export function atOnce<T>(work: Stepwise<T>): T {
  for (;;) {
    const step = work.next();
    if (step.done === true) return step.value;
  }
}
