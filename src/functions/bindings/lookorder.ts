import { dayPlanTable } from "../../domain/day/dayPlanTable";
import { lookOrder } from "../../domain/day/lookOrder";
import { succeed } from "../../domain/succeed";
import { answerTable } from "../answerTable";
import { dayArguments } from "../dayArguments";

/**
 * The day's plan in the best order found, so that the last shot ends as soon as it can.
 *
 * @customfunction LOOKORDER
 * @family The day
 * @answers In which order are the looks shot soonest?
 * @param looks The looks of one day with their heading row, columns in any order; needs Look, Talent, Shooting and Change.
 * @param call The time of day everybody is there, such as 09:00.
 * @param [people] Two columns, what and how many: dressers, chairs, cameras, meal after hours, meal minutes, crossing minutes between sets, hand-over minutes of a shared piece.
 * @param [changes] Minutes of change from look to look (row to column), with the look numbers as heading row and column.
 * @param [columns] Which heading means what, where yours is not understood, such as "fixed=Slot; after=Only after".
 * @shape A table that spills, with the columns of DAYPLAN, one row a look in the order found. After and Fixed (first, last or a place) are kept, looks that have been shot stay first as they happened. The last shot never ends later than in the order given, if that keeps After and Fixed; of orders that end equally soon, one near to it.
 * @units As for DAYPLAN.
 * @blanks As for DAYPLAN. Fixed blank or 0: any place. After blank: after nothing.
 * @bounds One day at a time, any number of looks. Days of up to 12 looks with one camera are as good as always proved best; longer ones are searched for so many steps and no longer, so the same day always gives the same order. What counts is the end of the last shot alone. A Fixed place at which a look has been shot already no longer binds.
 * @errors As for DAYPLAN, but an order given that contradicts After is put right; a Fixed that After or another Fixed rules out is #VALUE!.
 * @source Layered search over sets of looks (Held and Karp 1962) with machine bounds (Johnson 1954, Mitten 1959), and late acceptance hill climbing (Burke and Bykov 2017); the rules of the day are common practice, no source.
 * @caution The soonest end is not all that makes a day good: daylight, nerves and who is tired have no column here. Long days and hurried changes injure; for meals, rest and minors ask what holds for your place and crew, see DAYPLAN.
 * @example =TACK.LOOKORDER({"Look","Talent","Change","Shooting";1,"Mina",15,30;2,"Mina",20,25;3,"Teo",20,40},TIME(9,0,0)) gives {"Look","Talent","Change from","Ready by","Shoot from","Shoot until","Waits for","Spare";1,"Mina","09:00","09:15","09:15","09:45","call",0;3,"Teo","09:15","09:35","09:45","10:25","camera, look 1",10;2,"Mina","09:45","10:05","10:25","10:50","camera, look 3",20}
 * @example =TACK.LOOKORDER({"Look","Talent","Change","Shooting","Fixed";1,"Mina",15,30,"";2,"Mina",20,25,"";3,"Teo",20,40,"first"},"9am") gives {"Look","Talent","Change from","Ready by","Shoot from","Shoot until","Waits for","Spare";3,"Teo","09:00","09:20","09:20","10:00","call",0;2,"Mina","09:20","09:40","10:00","10:25","camera, look 3",20;1,"Mina","10:25","10:40","10:40","11:10","Mina, look 2",0}
 * @example =TACK.LOOKORDER({"Look","Talent","Change","Shooting","Fixed","After";1,"Mina",15,30,"","";2,"Teo",20,25,"first",1},"9am") fails Fixed of look 2: "first" cannot be used
 * @returns {any[][]} One row a look.
 */
export function lookorder(looks: any[][], call: any, people?: any[][], changes?: any[][], columns?: any): any[][] {
  const day = dayArguments(looks, call, people, changes, columns);
  if (!day.ok) return answerTable(day);
  const ordered = lookOrder(day.value);
  return answerTable(ordered.ok ? succeed(dayPlanTable(ordered.value.plan)) : ordered);
}
