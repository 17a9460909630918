/** Days in a month (1 to 12) as the 1900 system counts them: February 1900 has 29, though the real one had 28. */
export function daysInMonth(year: number, month: number): number {
  if (month !== 2) return month === 4 || month === 6 || month === 9 || month === 11 ? 30 : 31;
  if (year === 1900) return 29;
  return year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28;
}
