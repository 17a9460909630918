import type { Stepwise } from "../../domain/plan/stepwise";
import { pause } from "./pause";

/** So long the page may stand still: a frame at 60 a second. */
const MOST_MILLISECONDS = 16;

/** What long work comes to, done a slice at a time so that the page stays alive; null once nobody wants it any more. */
export async function inSlices<T>(work: Stepwise<T>, isWanted: () => boolean): Promise<T | null> {
  for (;;) {
    await pause();
    if (!isWanted()) return null;
    const until = performance.now() + MOST_MILLISECONDS;
    do {
      const step = work.next();
      if (step.done === true) return step.value;
    } while (performance.now() < until);
  }
}
