/** "1 piece", "1,200 pieces". */
export function sayCount(count: number, one: string, many: string): string {
  return `${count.toLocaleString("en-GB")} ${count === 1 ? one : many}`;
}
