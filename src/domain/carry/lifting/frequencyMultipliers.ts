import { frequency, units } from "../../../../shared/lifting.json";
import type { Lift } from "./lift";

const MOST_HOURS = [1, 2, Infinity];

/** The column of the frequency table that a lift belongs to, in hundredths, one for each number of lifts a minute in the table. */
export function frequencyMultipliers({ unit, vertical, hours }: Lift): readonly number[] {
  const byHours = vertical < units[unit].height ? frequency.low : frequency.high;
  return byHours[MOST_HOURS.findIndex((most) => hours <= most)]!;
}
