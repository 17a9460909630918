import type { Look } from "./look";

/** The looks of each day in the order of the sheet, by their date; looks without one belong to a day of their own, under null. */
export function looksByDay(looks: readonly Look[]): ReadonlyMap<number | null, readonly Look[]> {
  const byDay = new Map<number | null, Look[]>();
  for (const look of looks) {
    const ofDay = byDay.get(look.date);
    if (ofDay === undefined) byDay.set(look.date, [look]);
    else ofDay.push(look);
  }
  return byDay;
}
