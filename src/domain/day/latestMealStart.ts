import { clockFraction } from "./clockFraction";
import { clockSeconds } from "./clockSeconds";
import { secondsNearCall } from "./secondsNearCall";

/**
 * The latest time, as a fraction of the day of call, at which the next meal may begin.
 *
 * Hours run from call, or from the end of the last meal where that is later; null where there was none.
 */
export function latestMealStart(call: number, hours: number, lastMealEnds: number | null): number {
  const callSeconds = clockSeconds(call);
  const endedSeconds = lastMealEnds === null ? callSeconds : secondsNearCall(lastMealEnds, callSeconds);
  return clockFraction(Math.max(callSeconds, endedSeconds) + Math.round(hours * 3600));
}
