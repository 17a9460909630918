import type { NotedFigure } from "./notedFigure";

/** What one place of the workbook says of a shoot day; null is not said, or not so that it can be read. */
export interface DayNotes {
  /** Serial day; null where it does not say which day it speaks of. */
  readonly date: number | null;
  /** Fractions of a day. */
  readonly call: NotedFigure | null;
  readonly wrap: NotedFigure | null;
  /** Hours from call until the meal is due. */
  readonly meal: NotedFigure | null;
  readonly dressers: NotedFigure | null;
  readonly chairs: NotedFigure | null;
}
