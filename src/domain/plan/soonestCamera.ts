import { cameraThereSeconds } from "./cameraThereSeconds";
import type { MealSpan } from "./daySchedule";
import type { Station } from "./station";

/** Which camera can begin on that set soonest, the first where tied. */
export function soonestCamera(cameras: Station, set: number, crossingSeconds: number, meal: MealSpan | null): number {
  let best = 0;
  let bestSeconds = Infinity;
  for (let camera = 0; camera < cameras.freeAtSeconds.length; camera++) {
    const there = cameraThereSeconds(cameras, camera, set, crossingSeconds, meal);
    if (there < bestSeconds) {
      best = camera;
      bestSeconds = there;
    }
  }
  return best;
}
