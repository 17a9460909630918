import type { DaySchedule } from "./daySchedule";

/** Where the meal may begin, best first: the latest step end that is not after it is due, back to the first; then the ends after it, soonest first. */
export function mealStartsInOrder(unbroken: DaySchedule, dueSeconds: number): number[] {
  const ends = new Set<number>();
  unbroken.untilSeconds.forEach((until, step) => {
    if (until > unbroken.fromSeconds[step]!) ends.add(until);
  });
  const sorted = [...ends].sort((a, b) => a - b);
  const inTime = sorted.filter((end) => end <= dueSeconds).reverse();
  return [...inTime, ...sorted.filter((end) => end > dueSeconds)];
}
