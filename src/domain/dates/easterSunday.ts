import { serialFromYmd } from "./serialFromYmd";

/**
 * The serial day of Easter Sunday (Western), years 1900 to 9999; null outside.
 *
 * Meeus/Jones/Butcher: Jean Meeus, Astronomical Algorithms, chapter 8 (from memory; checked against a published list).
 */
export function easterSunday(year: number): number | null {
  const golden = year % 19;
  const century = Math.floor(year / 100);
  const ofCentury = year % 100;
  const moved = Math.floor((century - Math.floor((century + 8) / 25) + 1) / 3);
  const moon = (19 * golden + century - Math.floor(century / 4) - moved + 15) % 30;
  const sunday = (32 + 2 * (century % 4) + 2 * Math.floor(ofCentury / 4) - moon - (ofCentury % 4)) % 7;
  const late = Math.floor((golden + 11 * moon + 22 * sunday) / 451);
  const day = moon + sunday - 7 * late + 114;
  return serialFromYmd(year, Math.floor(day / 31), (day % 31) + 1);
}
