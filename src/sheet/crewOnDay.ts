import type { CrewFound } from "./crewFound";
import type { DayNotes } from "./dayNotes";

/** A day's row says after how many hours the meal is due and not how long it is: the least that labour rules ask for, such as California's Wage Order 12. */
const LEAST_MEAL_MINUTES = 30;

/** The people of one day: those listed for the whole job, but for what is said of that day alone. */
export function crewOnDay(found: CrewFound, { meal, dressers, chairs }: DayNotes): CrewFound {
  const { crew } = found;
  return {
    crew: {
      ...crew,
      dressers: dressers?.value ?? crew.dressers,
      chairs: chairs?.value ?? crew.chairs,
      meal: meal === null ? crew.meal : { afterHours: meal.value, minutes: crew.meal?.minutes ?? LEAST_MEAL_MINUTES },
    },
    place: dressers ?? chairs ?? found.place ?? meal,
    mealPlace: meal ?? found.mealPlace,
  };
}
