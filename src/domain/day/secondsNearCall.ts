import { clockSeconds } from "./clockSeconds";
import { secondsADay } from "./secondsADay";

const HALF_DAY_SECONDS = secondsADay / 2;

/**
 * A time typed beside a day's call, in seconds of that day: what lies more than twelve hours before call is meant for the next morning.
 *
 * 01:00 beside a call at 18:00 is 25:00; 08:30 beside a call at 09:00 stays before it.
 */
export function secondsNearCall(fraction: number, callSeconds: number): number {
  const seconds = clockSeconds(fraction);
  return callSeconds - seconds > HALF_DAY_SECONDS ? seconds + secondsADay : seconds;
}
