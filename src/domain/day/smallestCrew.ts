import type { Crew } from "./crew";

/** What is taken where nothing is said: one dresser, one chair, one camera, no meal. */
export const smallestCrew: Crew = {
  dressers: 1,
  chairs: 1,
  cameras: 1,
  meal: null,
  crossingMinutes: 0,
  handOverMinutes: 0,
};
