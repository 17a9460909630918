import { secondsADay } from "./secondsADay";

/** Whole seconds as a fraction of a day: 34,200 is what the workbook keeps for 09:30. */
export function clockFraction(seconds: number): number {
  return seconds / secondsADay;
}
