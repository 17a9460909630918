import type { Station } from "./station";

/** That many of one thing, all free from call. */
export function openStation(howMany: number, callSeconds: number): Station {
  return {
    freeAtSeconds: new Array<number>(howMany).fill(callSeconds),
    lastLook: new Array<number>(howMany).fill(-1),
    lastSet: new Array<number>(howMany).fill(-1),
  };
}
