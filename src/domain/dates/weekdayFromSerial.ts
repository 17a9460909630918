/** The weekday of a serial day: 0 Monday to 6 Sunday. Before March 1900 it is the 1900 system's, one day early by rule. */
export function weekdayFromSerial(serial: number): number {
  return (Math.floor(serial) + 5) % 7;
}
