import { angleSlope, frequency, grip as grips, travelBase, units } from "../../../../shared/lifting.json";
import { frequencyMultipliers } from "./frequencyMultipliers";
import type { Lift } from "./lift";
import { liftOutside } from "./liftOutside";

/**
 * The recommended weight limit of a lift, in its unit and in full precision; 0 for a lift outside the method.
 *
 * The revised NIOSH lifting equation (source in shared/lifting.json). The manual rounds each multiplier to two places, so that its
 * worked examples differ from this in the last digit. A reach or a travel below the least counts as the least, fewer than 0.2 lifts
 * a minute as 0.2; between the rows of the frequency table it is interpolated straight.
 */
export function liftLimit(lift: Lift): number {
  if (liftOutside(lift) !== null) return 0;
  const { horizontal, vertical, travel, angle, grip } = lift;
  const unit = units[lift.unit];
  return (
    unit.load *
    (unit.reach / Math.max(horizontal, unit.reach)) *
    (1 - unit.heightSlope * Math.abs(vertical - unit.height)) *
    (travelBase + unit.travelShare / Math.max(travel, unit.leastTravel)) *
    (1 - angleSlope * angle) *
    frequencyMultiplier(lift) *
    grips[grip][vertical < unit.height ? 0 : 1]!
  );
}

function frequencyMultiplier(lift: Lift): number {
  const hundredths = frequencyMultipliers(lift);
  const { lifts } = frequency;
  const rate = Math.max(lift.liftsPerMinute, lifts[0]!);
  const above = lifts.findIndex((row) => row >= rate);
  const share = above === 0 ? 1 : (rate - lifts[above - 1]!) / (lifts[above]! - lifts[above - 1]!);
  const below = hundredths[Math.max(0, above - 1)]!;
  return (below + (hundredths[above]! - below) * share) / 100;
}
