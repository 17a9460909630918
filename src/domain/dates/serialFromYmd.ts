import { daysInMonth } from "./daysInMonth";

/**
 * The serial day of a calendar day, or null where there is no such day (2026-02-30) or no workbook can show it.
 *
 * Years 1900 to 9999, months 1 to 12, days 1 to 31, all whole. 1900-02-29 is serial 60, as the 1900 system has it.
 */
export function serialFromYmd(year: number, month: number, day: number): number | null {
  if (!(year >= 1900 && year <= 9999 && month >= 1 && month <= 12 && day >= 1)) return null;
  if (day > daysInMonth(year, month)) return null;
  // March first, so that the leap day is the year's last and falls out of the arithmetic.
  const marchYear = month > 2 ? year : year - 1;
  const marchMonth = month > 2 ? month - 3 : month + 9;
  const dayOfYear = ((153 * marchMonth + 2) / 5) | 0;
  const days = 365 * marchYear + ((marchYear / 4) | 0) - ((marchYear / 100) | 0) + ((marchYear / 400) | 0);
  const serial = days + dayOfYear + day - 693900;
  // Before March 1900 the fictitious 29 February has not been counted yet; that day itself lands on 1 March by itself.
  return year === 1900 && month < 3 ? (month === 2 && day === 29 ? 60 : serial - 1) : serial;
}
