/** The closed weekdays (bit 0 Monday to bit 6 Sunday) of seven characters, Monday first, 1 closed and 0 open; else null. */
export function closedWeekdaysFromPattern(pattern: string): number | null {
  if (pattern.length !== 7) return null;
  let closedWeekdays = 0;
  for (let day = 0; day < 7; day++) {
    const mark = pattern.charCodeAt(day) - 48;
    if (mark !== 0 && mark !== 1) return null;
    closedWeekdays |= mark << day;
  }
  return closedWeekdays;
}
