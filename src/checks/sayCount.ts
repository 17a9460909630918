/** A number with its noun: "1 row", "3 rows". */
export function sayCount(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? "" : "s"}`;
}
