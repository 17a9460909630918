import type { Place } from "./place";

/** Mean radius R1 = (2a + b) / 3 of the Geodetic Reference System 1980 (Moritz, Journal of Geodesy 74, 2000), in km. */
const EARTH_RADIUS_KM = 6371.0088;
const RADIANS_PER_DEGREE = Math.PI / 180;

/** The way from place to place as the crow flies, by the haversine formula on a sphere: at most about 0.6% off. */
export function kilometresBetween(from: Place, to: Place): number {
  const half = (degrees: number): number => Math.sin((degrees * RADIANS_PER_DEGREE) / 2) ** 2;
  const cosine = (degrees: number): number => Math.cos(degrees * RADIANS_PER_DEGREE);
  const haversine =
    half(to.latitude - from.latitude) +
    cosine(from.latitude) * cosine(to.latitude) * half(to.longitude - from.longitude);
  return 2 * EARTH_RADIUS_KM * Math.asin(Math.min(1, Math.sqrt(haversine)));
}
