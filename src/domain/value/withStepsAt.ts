import type { ValueStep } from "./valueStep";

/** The same curve with a step at the start of each of the days and of the day after it, so that each of them stands alone. Days before the first step hold nothing and get none. */
export function withStepsAt(steps: readonly ValueStep[], days: Iterable<number>): readonly ValueStep[] {
  const wanted = new Set([...days].flatMap((day) => [day, day + 1]));
  for (const { day } of steps) wanted.delete(day);
  if (wanted.size === 0 || steps.length === 0) return steps;
  const more = [...wanted].sort((a, b) => a - b);
  const all: ValueStep[] = [];
  let place = 0;
  for (const step of steps) {
    while (place < more.length && more[place]! < step.day) addTo(all, more[place++]!);
    all.push(step);
  }
  while (place < more.length) addTo(all, more[place++]!);
  return all;
}

function addTo(steps: ValueStep[], day: number): void {
  const before = steps.at(-1);
  if (before !== undefined) steps.push({ ...before, day });
}
