import { clockSeconds } from "./clockSeconds";
import { secondsADay } from "./secondsADay";

/** Wrap in seconds of the day of call: a time earlier in the day than call is the next morning's. Both are fractions of a day. */
export function wrapSeconds(wrap: number, call: number): number {
  const seconds = clockSeconds(wrap);
  return seconds < clockSeconds(call) ? seconds + secondsADay : seconds;
}
