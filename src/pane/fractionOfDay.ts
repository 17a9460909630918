/** The time of day of a moment on the computer's own clock, as a fraction of the day. */
export function fractionOfDay(moment: Date): number {
  return (moment.getHours() * 60 + moment.getMinutes()) / (24 * 60);
}
