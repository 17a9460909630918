import { openStation } from "../../../src/domain/plan/openStation";
import type { Station } from "../../../src/domain/plan/station";

export const roof = 0;
export const stairs = 1;
export const nowhere = -1;

/** Two cameras: one free at 100 on the roof, one free at 140 on the stairs. */
export function twoCameras(): Station {
  const cameras = openStation(2, 0);
  cameras.freeAtSeconds.splice(0, 2, 100, 140);
  cameras.lastSet.splice(0, 2, roof, stairs);
  return cameras;
}
