import { secondsADay } from "./secondsADay";

/** A time of day in whole seconds, so that sums of times are exact: 09:30 is 34,200. */
export function clockSeconds(fraction: number): number {
  return Math.round(fraction * secondsADay);
}
