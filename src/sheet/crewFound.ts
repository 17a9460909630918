import type { Crew } from "../domain/day/crew";
import type { NotedCell } from "./notedCell";

/** The people of a day, and where the workbook says so. */
export interface CrewFound {
  readonly crew: Crew;
  /** The first cell of the list; null where the workbook does not say and the smallest crew is taken. */
  readonly place: NotedCell | null;
  /** The cell that says when the meal is due; null where none does. */
  readonly mealPlace: NotedCell | null;
}
