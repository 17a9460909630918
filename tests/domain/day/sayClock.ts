/** A time of day as hh:mm, past midnight counted on; a fraction that is no whole minute shows itself. */
export function sayClock(fraction: number): string {
  const minutes = fraction * 1440;
  const whole = Math.round(minutes);
  if (Math.abs(minutes - whole) > 1e-6) return `${minutes} min`;
  return `${String(Math.floor(whole / 60)).padStart(2, "0")}:${String(whole % 60).padStart(2, "0")}`;
}
