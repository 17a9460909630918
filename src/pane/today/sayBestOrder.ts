import type { OrderedDay } from "../../domain/day/orderedDay";
import { sayMinutes } from "../sayMinutes";
import { sayClock } from "../../domain/sayClock";

/** How good the best order found is: what it saves, and whether a better one is ruled out. */
export function sayBestOrder({ plan, minutesSaved, endsNotBefore, isProvedBest }: OrderedDay): string {
  const saved =
    minutesSaved === null
      ? "The order given does not keep After and Fixed; this one does."
      : minutesSaved > 0
        ? `It saves ${sayMinutes(minutesSaved)}.`
        : "It saves nothing over the order given.";
  if (isProvedBest) return `${saved} Proved best: no order ends sooner than ${sayClock(plan.ends)}.`;
  const left = sayMinutes((plan.ends - endsNotBefore) * 24 * 60);
  return `${saved} Best found: no order ends before ${sayClock(endsNotBefore)}, so at most ${left} are left to gain.`;
}
