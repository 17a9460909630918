/** A fraction of a day as hh:mm, to the nearest minute; past midnight it goes on counting, 25:30. */
export function sayClock(time: number): string {
  const minutes = Math.round(time * 1440);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}
