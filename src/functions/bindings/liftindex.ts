import { liftIndex } from "../../domain/carry/lifting/liftIndex";
import { needed } from "../../domain/needed";
import { gramsPerUnit } from "../../sheet/gramsPerUnit";
import { readWeight } from "../../sheet/readWeight";
import { answer } from "../answer";
import { liftArguments } from "../liftArguments";

/**
 * How heavy a load is beside the limit that the revised NIOSH lifting equation recommends: 1 is at the limit, above 1 is over it.
 *
 * @customfunction LIFTINDEX
 * @family Carrying, preparing, running about
 * @answers Is this too heavy to lift in this way?
 * @param load What is lifted, in kg or lb by unit, or as text with its unit, such as "12 kg".
 * @param horizontal How far in front of the ankles the hands are, in cm (in inches with "lb").
 * @param vertical How high above the floor the hands are, at the start or at the end of the lift, in cm or inches.
 * @param travel How far up or down the hands go, in cm or inches.
 * @param angle Degrees that one turns away from straight in front.
 * @param liftsPerMinute Lifts a minute, on average over a quarter of an hour.
 * @param hours Hours of lifting: up to 1, up to 2 or up to 8; those above 2 with the usual breaks.
 * @param grip How well the load is held: "good" (handles), "fair" or "poor" (bags that sag, loads without handles).
 * @param [unit] "kg" for kilograms and centimetres (when left out), "lb" for pounds and inches.
 * @shape One number, in full precision: load over LIFTLIMIT of the same arguments.
 * @units None; load, lengths and limit are in the system of unit.
 * @blanks Only unit may be blank. 0 is a height at the floor, no travel, no turn; fewer than 0.2 lifts a minute count as 0.2.
 * @bounds As for LIFTLIMIT. The higher of the indexes at the start and at the end counts.
 * @errors A load that is no weight of 0 or more, and what is an error in LIFTLIMIT, are #VALUE!. A lift outside the method has no index: #N/A that names the measure.
 * @source Waters, Putz-Anderson and Garg, Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110, revised 2021: jobs are to be kept at 1 or below, and above 3 many are at high risk.
 * @caution For two hands, standing, a steady load, good footing, no heat, and no carrying further than a step or two: it says nothing of carrying bags through a city, one-handed lifts, stairs, pushing or pulling. Soft bags that sag are grip "poor". A figure for planning, not medical advice: an index below 1 does not make a lift safe for everybody; local rules and a doctor's or safety adviser's word come first.
 * @example =TACK.LIFTINDEX(11.5,25,75,25,0,0.2,1,"good") gives 0.5
 * @example =TACK.LIFTINDEX("23 kg",50,75,25,0,0.2,1,"good") gives 2
 * @example =TACK.LIFTINDEX(12,70,75,25,0,0.2,1,"poor") fails horizontal: at "70" the lifting equation recommends no load
 * @returns {any} The lifting index.
 */
export function liftindex(
  load: any,
  horizontal: any,
  vertical: any,
  travel: any,
  angle: any,
  liftsPerMinute: any,
  hours: any,
  grip: any,
  unit?: any,
): any {
  const weight = needed(readWeight(load, "load"), "load", "what is lifted, such as 12 or 12 kg");
  if (!weight.ok) return answer(weight);
  const lift = liftArguments({ horizontal, vertical, travel, angle, liftsPerMinute, hours }, grip, unit);
  if (!lift.ok) return answer(lift);
  const { grams, bareAmount } = weight.value;
  return answer(liftIndex(bareAmount ?? grams! / gramsPerUnit(lift.value.unit)!, lift.value));
}
