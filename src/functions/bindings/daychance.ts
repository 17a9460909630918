import { chanceByWrap } from "../../domain/day/chanceByWrap";
import { needed } from "../../domain/needed";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { readWholeNumber } from "../../sheet/readWholeNumber";
import { answer } from "../answer";
import { dayArguments } from "../dayArguments";

/**
 * The chance that the day ends by wrap, where changes take now less and now more.
 *
 * @customfunction DAYCHANCE
 * @family The day
 * @answers How sure is it that the day ends in time?
 * @param looks The looks of one day with their heading row; needs Look, Talent, Shooting and Change or Likely, and for a chance Low and High.
 * @param call The time of day everybody is there, such as 09:00.
 * @param wrap The time of day the day ends; earlier than call is the next morning.
 * @param [people] Two columns, what and how many: dressers, chairs, cameras, meal after hours, meal minutes, crossing minutes between sets, hand-over minutes of a shared piece.
 * @param [changes] Minutes of change from look to look (row to column), with the look numbers as heading row and column.
 * @param [columns] Which heading means what, where yours is not understood, such as "low=Best; high=Worst".
 * @param [runs] How many days are tried; 2000 when left out.
 * @param [seed] Another whole number tries other days; 1 when left out.
 * @shape One number from 0 (never) to 1 (always): the share of the days tried whose last shot ends by wrap; format it as a percentage.
 * @units Low, Likely and High are minutes of change, drawn to the second; the same runs and seed give the same chance in every cell and on every machine.
 * @blanks Likely blank: Change. Low or High blank or 0: Likely, so that a look with neither keeps its change. No look with a range: 1 or 0, as DAYFIT says. Else as for DAYPLAN.
 * @bounds runs from 1 to 20000, seed from 0 to 4294967295. With 2000 runs the standard error is at most 0.011, and the square root of chance x (1 - chance) / runs in general: two chances nearer than that are one. Changes are drawn apart from each other; shooting, hair and make-up, and the minutes in changes are fixed.
 * @errors Low, Likely and High that do not rise are #VALUE! that names the look; all else as for DAYFIT.
 * @source The three-point figures of PERT: mean (Low + 4 Likely + High) / 6 (Malcolm and others, Operations Research 7, 1959), as a beta distribution with its peak at Likely; numbers by xoshiro128** (Blackman and Vigna).
 * @caution A chance is as good as the minutes typed, and a day holds more that can go late than changes. Long days injure: this figure is no advice on hours; ask what holds for your place, crew and talents.
 * @example =TACK.DAYCHANCE({"Look","Talent","Low","Likely","High","Shooting";1,"Mina",10,15,30,30;2,"Teo",10,20,50,25;3,"Mina",5,10,20,30},TIME(9,0,0),TIME(10,45,0)) gives 0.744
 * @example =TACK.DAYCHANCE({"Look","Talent","Change","Shooting";1,"Mina",15,30},"09:00","09:45") gives 1
 * @example =TACK.DAYCHANCE({"Look","Talent","Low","Likely","High","Shooting";1,"Mina",20,15,30,30},"09:00","10:00") fails Low, Likely, High of look 1: "20, 15, 30" cannot be used
 * @returns {any} The chance.
 */
export function daychance(
  looks: any[][],
  call: any,
  wrap: any,
  people?: any[][],
  changes?: any[][],
  columns?: any,
  runs?: any,
  seed?: any,
): any {
  const wrapTime = needed(readTimeOfDay(wrap, "wrap"), "wrap", "the time the day ends, such as 18:00");
  if (!wrapTime.ok) return answer(wrapTime);
  const runCount = readWholeNumber(runs, "runs", 1, 20_000);
  if (!runCount.ok) return answer(runCount);
  const seedNumber = readWholeNumber(seed, "seed", 0, 4_294_967_295);
  if (!seedNumber.ok) return answer(seedNumber);
  const day = dayArguments(looks, call, people, changes, columns);
  if (!day.ok) return answer(day);
  return answer(chanceByWrap(day.value, wrapTime.value, runCount.value ?? 2000, seedNumber.value ?? 1));
}
