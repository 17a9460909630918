import { clearOfMeal } from "./clearOfMeal";
import type { MealSpan } from "./daySchedule";
import type { Station } from "./station";

/**
 * When that camera can begin on a set: free, and crossed over from another set where it comes from one.
 *
 * A crossing is done wholly before the meal or wholly after it, like a step. A set that is not said needs no crossing.
 */
export function cameraThereSeconds(
  cameras: Station,
  camera: number,
  set: number,
  crossingSeconds: number,
  meal: MealSpan | null,
): number {
  const free = cameras.freeAtSeconds[camera]!;
  const cameFrom = cameras.lastSet[camera]!;
  if (crossingSeconds === 0 || set < 0 || cameFrom < 0 || cameFrom === set) return free;
  return clearOfMeal(free, crossingSeconds, meal) + crossingSeconds;
}
