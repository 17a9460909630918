/** A time of day in whole milliseconds: 09:30 is 34,200,000. Fine enough that a table of minutes with decimals loses nothing. */
export function msFromDays(fraction: number): number {
  return Math.round(fraction * 86_400_000);
}
