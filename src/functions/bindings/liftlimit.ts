import { liftLimit } from "../../domain/carry/lifting/liftLimit";
import { succeed } from "../../domain/succeed";
import { answer } from "../answer";
import { liftArguments } from "../liftArguments";

/**
 * The weight limit that the revised NIOSH lifting equation recommends for one way of lifting.
 *
 * @customfunction LIFTLIMIT
 * @family Carrying, preparing, running about
 * @answers How much may one lift in this way?
 * @param horizontal How far in front of the ankles the hands are, in cm (in inches with "lb").
 * @param vertical How high above the floor the hands are, at the start or at the end of the lift, in cm or inches.
 * @param travel How far up or down the hands go, in cm or inches.
 * @param angle Degrees that one turns away from straight in front.
 * @param liftsPerMinute Lifts a minute, on average over a quarter of an hour.
 * @param hours Hours of lifting: up to 1, up to 2 or up to 8; those above 2 with the usual breaks.
 * @param grip How well the load is held: "good" (handles), "fair" or "poor" (bags that sag, loads without handles).
 * @param [unit] "kg" for kilograms and centimetres (when left out), "lb" for pounds and inches.
 * @shape One number, in full precision; 0 for a lift outside the method.
 * @units Kilograms, or pounds with "lb". The two systems have rounded constants of their own: "lb" allows up to 4 % more.
 * @blanks Only unit may be blank. 0 is a height at the floor, no travel, no turn; fewer than 0.2 lifts a minute count as 0.2.
 * @bounds Reach up to 63 cm (25 in), counted as 25 cm (10 in) where less; height up to 175 cm (70 in); travel up to 175 cm (70 in), counted as 25 cm (10 in) where less; angle up to 135; up to 8 hours; up to 15 lifts a minute, fewer for long or low lifts. Beyond these the limit is 0. The lower of the limits at the start and at the end counts; above 8 lifts a minute the manual takes the frequency factor at the start.
 * @errors A measure that is blank, no number or below 0, a reach or hours of 0, another grip or unit are #VALUE!.
 * @source Waters, Putz-Anderson and Garg, Applications Manual for the Revised NIOSH Lifting Equation, DHHS (NIOSH) 94-110, revised 2021. The manual rounds each multiplier to two places, so its printed results differ in the last digit.
 * @caution For two hands, standing, a steady load, good footing, no heat, and no carrying further than a step or two: it says nothing of carrying bags through a city, one-handed lifts, stairs, pushing or pulling. Soft bags that sag are grip "poor". A figure for planning, not medical advice: it does not make a lift safe for everybody; local rules and a doctor's or safety adviser's word come first.
 * @example =TACK.LIFTLIMIT(25,75,25,0,0.2,1,"good") gives 23
 * @example =TACK.LIFTLIMIT(20,30,10,0,0.2,1,"good","lb") gives 25.5
 * @example =TACK.LIFTLIMIT(70,75,25,0,0.2,1,"good") gives 0
 * @example =TACK.LIFTLIMIT(25,75,25,0,0.2,1,"firm") fails grip: "firm" cannot be used; give "good", "fair" or "poor"
 * @returns {any} The recommended weight limit.
 */
export function liftlimit(
  horizontal: any,
  vertical: any,
  travel: any,
  angle: any,
  liftsPerMinute: any,
  hours: any,
  grip: any,
  unit?: any,
): any {
  const lift = liftArguments({ horizontal, vertical, travel, angle, liftsPerMinute, hours }, grip, unit);
  return answer(lift.ok ? succeed(liftLimit(lift.value)) : lift);
}
