/** A fraction of a day as hh:mm, past midnight counted on: 25:30. */
export function sayClock(time: number): string {
  const minutes = Math.round(time * 1440);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}
