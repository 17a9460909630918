import { dayPlan } from "../../domain/day/dayPlan";
import { minutesSpareAtWrap } from "../../domain/day/minutesSpareAtWrap";
import { needed } from "../../domain/needed";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { answer } from "../answer";
import { dayArguments } from "../dayArguments";

/**
 * Minutes to spare between the day's last shot and wrap; below 0 the day runs over.
 *
 * @customfunction DAYFIT
 * @family The day
 * @answers Do these looks fit into the day?
 * @param looks The looks of one day with their heading row, columns in any order; needs Look, Talent, Shooting and Change.
 * @param call The time of day everybody is there, such as 09:00.
 * @param wrap The time of day the day ends; earlier than call is the next morning.
 * @param [people] Two columns, what and how many: dressers, chairs, cameras, meal after hours, meal minutes, crossing minutes between sets, hand-over minutes of a shared piece.
 * @param [changes] Minutes of change from look to look (row to column), with the look numbers as heading row and column.
 * @param [columns] Which heading means what, where yours is not understood, such as "change=Mins; talent=Girl".
 * @shape One number: wrap less the end of the last shot of DAYPLAN, from the same arguments.
 * @units Minutes.
 * @blanks As for DAYPLAN. No looks under the heading row: #N/A. call and wrap must be given; 0 is midnight.
 * @bounds One day at a time, in the order given; changing out of the last look, striking the set and packing are not counted.
 * @errors As for DAYPLAN, and a wrap that is no time of day, are #VALUE!.
 * @source Timing by precedence and resources as in critical path planning, taken in the order given; the changes and the meal are common practice, no source.
 * @caution Long days injure, and a day that fits by the minute has no room for what goes wrong. Limits to the day, its meal and the rest after it differ by place and agreement (the United Kingdom's Working Time Regulations 1998: 11 hours' rest a day); this figure is no advice on them.
 * @example =TACK.DAYFIT({"Look","Talent","Change","Shooting";1,"Mina",15,30;2,"Teo",20,25;3,"Mina",10,30},TIME(9,0,0),TIME(11,0,0)) gives 20
 * @example =TACK.DAYFIT({"Look","Talent","Change","Shooting";1,"Mina",15,90},"22:00","23:30") gives -15
 * @example =TACK.DAYFIT({"Look","Talent","Change","Shooting";1,"Mina",15,90},"23:00","01:00") gives 15
 * @example =TACK.DAYFIT({"Look","Talent","Change","Shooting";1,"Mina",15,90},"09:00","late") fails wrap: "late" cannot be used
 * @returns {any} Minutes to spare.
 */
export function dayfit(looks: any[][], call: any, wrap: any, people?: any[][], changes?: any[][], columns?: any): any {
  const wrapTime = needed(readTimeOfDay(wrap, "wrap"), "wrap", "the time the day ends, such as 18:00");
  if (!wrapTime.ok) return answer(wrapTime);
  const day = dayArguments(looks, call, people, changes, columns);
  if (!day.ok) return answer(day);
  const plan = dayPlan(day.value);
  return answer(plan.ok ? minutesSpareAtWrap(plan.value, wrapTime.value) : plan);
}
