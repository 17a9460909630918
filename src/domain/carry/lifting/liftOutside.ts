import { frequency, mostAngle, mostHours, units } from "../../../../shared/lifting.json";
import { frequencyMultipliers } from "./frequencyMultipliers";
import type { Lift } from "./lift";

/** What puts a lift outside the revised lifting equation: which of its measures, and the most it may be in words. */
interface Outside {
  readonly argument: "horizontal" | "vertical" | "travel" | "angle" | "liftsPerMinute" | "hours";
  readonly most: string;
}

/** The first measure of a lift that is beyond what the method covers, for which no load is recommended at all; null where it covers all. */
export function liftOutside(lift: Lift): Outside | null {
  const unit = units[lift.unit];
  const most = [
    ["horizontal", unit.mostReach],
    ["vertical", unit.mostHeight],
    ["travel", unit.mostTravel],
    ["angle", mostAngle],
    ["hours", mostHours],
  ] as const;
  for (const [argument, value] of most) if (lift[argument] > value) return { argument, most: `at most ${value}` };
  const { lifts } = frequency;
  const firstNone = frequencyMultipliers(lift).indexOf(0);
  const end = firstNone < 0 ? null : lifts[firstNone]!;
  if (end === null ? lift.liftsPerMinute <= lifts.at(-1)! : lift.liftsPerMinute < end) return null;
  return { argument: "liftsPerMinute", most: end === null ? `at most ${lifts.at(-1)!}` : `fewer than ${end}` };
}
