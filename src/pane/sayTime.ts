/** A fraction of a day as 09:30, to the nearest minute; past midnight it goes on counting, 25:30. */
export function sayTime(fraction: number): string {
  const minutes = Math.round(fraction * 24 * 60);
  const two = (count: number): string => String(count).padStart(2, "0");
  return `${two(Math.floor(minutes / 60))}:${two(minutes % 60)}`;
}
