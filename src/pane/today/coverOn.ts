import type { Cover, CoverFigure } from "./Cover";

/** What is covered on a day; null where nothing says so. */
export function coverOn({ byDay, everyDay }: Cover, day: number): CoverFigure | null {
  return byDay.get(day) ?? everyDay;
}
