import { kilometresBetween } from "./kilometresBetween";
import type { Place } from "./place";

/** Minutes from place to place: the way as the crow flies, `detour` times as long by road, at a steady speed. */
export function travelMinutes(from: Place, to: Place, kmPerHour: number, detour: number): number {
  return ((kilometresBetween(from, to) * detour) / kmPerHour) * 60;
}
