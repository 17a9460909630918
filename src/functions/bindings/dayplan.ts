import { dayPlan } from "../../domain/day/dayPlan";
import { dayPlanTable } from "../../domain/day/dayPlanTable";
import { succeed } from "../../domain/succeed";
import { answerTable } from "../answerTable";
import { dayArguments } from "../dayArguments";

/**
 * The day's plan in the order given: when each look is changed, ready and shot, and what it waits for.
 *
 * @customfunction DAYPLAN
 * @family The day
 * @answers When must each look be ready, and what holds it up?
 * @param looks The looks of one day with their heading row, columns in any order; needs Look, Talent, Shooting and Change.
 * @param call The time of day everybody is there, such as 09:00.
 * @param [people] Two columns, what and how many: dressers, chairs, cameras, meal after hours, meal minutes, crossing minutes between sets, hand-over minutes of a shared piece.
 * @param [changes] Minutes of change from look to look (row to column), with the look numbers as heading row and column.
 * @param [columns] Which heading means what, where yours is not understood, such as "change=Mins; talent=Worn today by".
 * @shape A table that spills: Look, Talent, Change from, Ready by, Shoot from, Shoot until, Waits for, Spare, one row a look in the order they are shot: by Order, else by row. Change from and Ready by are the start and end of hair, make-up and change together; Waits for names what keeps the shot from being sooner; Spare is the time from ready to the shot.
 * @units Times of day, past midnight counted on (25:30); Spare in minutes; durations in minutes, to the second. A time more than twelve hours before call is the next morning's.
 * @blanks A duration that is blank is 0, a blank Change is Likely. Order blank or 0: after those that have one. Talent blank: waits for nobody. Arrives blank: as on the talent's other rows, else there at call. Make-up first blank: yes. Set blank: indoors or outdoors in Where stands for it, with neither the camera stays where it was. people left out: one dresser, one chair, one camera, no meal. changes: type every pair, 0 is no change; a talent's first look and a pair left out take the look's own Change.
 * @bounds One day at a time, any number of looks. A look needs all its talents (several parted by a comma, semicolon, &, + or "and"), one chair for hair and make-up, one dresser, one camera; no later look is fitted into a gap before an earlier one; shots begin in order. Looks that list one piece number in Pieces share it: the change of the later waits until the earlier is shot, undressed and has handed it over; the hand-over minutes are none where left out, or where the same talent keeps it on. A camera crosses between sets, and between indoors and outdoors of one. Shot at is when a shot began, and such looks come first. The one meal begins at the latest end of a step not after call and its hours; no step or crossing reaches into it, so one dresser more can now and then end the day later. Fixed binds only who reorders the day.
 * @errors Looks of two dates ("filter one day"), a look on two rows, an After that the order contradicts or that goes round in a circle, an unknown label in people, a duration above 0 and below 1 (type 15, not 0:15), and any cell that cannot be read are #VALUE! that names the look and the column.
 * @source Timing by precedence and resources as in critical path planning, taken in the order given; the changes and the meal are common practice, no source.
 * @caution Long days injure, and hurried changes do too. When a meal and rest are due differs by place and agreement: California's Wage Order 12 for motion pictures (8 CCR 11120, form of 11/2023) has a meal no later than six hours after call and again after the last one, other work there often after five; the United Kingdom's Working Time Regulations 1998 have 20 minutes' break in a day of over six hours and 11 hours' rest between days. This plan is no advice on them: ask what holds for your place, crew and talents, minors above all.
 * @example =TACK.DAYPLAN({"Look","Talent","Change","Shooting";1,"Mina",15,30;2,"Teo",20,25;3,"Mina",10,30},TIME(9,0,0)) gives {"Look","Talent","Change from","Ready by","Shoot from","Shoot until","Waits for","Spare";1,"Mina","09:00","09:15","09:15","09:45","call",0;2,"Teo","09:15","09:35","09:45","10:10","camera, look 1",10;3,"Mina","09:45","09:55","10:10","10:40","camera, look 2",15}
 * @example =TACK.DAYPLAN({"Look","Talent","Change","Shooting";1,"Mina",15,30;2,"Teo",20,25},"9am",{"dressers",2;"meal after hours",1;"meal minutes",30}) gives {"Look","Talent","Change from","Ready by","Shoot from","Shoot until","Waits for","Spare";1,"Mina","09:00","09:15","09:15","09:45","call",0;2,"Teo","09:00","09:20","10:15","10:40","meal",55}
 * @example =TACK.DAYPLAN({"Look","Talent","Change","Shooting";1,"Mina","0:15",30},TIME(9,0,0)) fails Change of look 1: "0:15" cannot be used
 * @returns {any[][]} One row a look.
 */
export function dayplan(looks: any[][], call: any, people?: any[][], changes?: any[][], columns?: any): any[][] {
  const day = dayArguments(looks, call, people, changes, columns);
  if (!day.ok) return answerTable(day);
  const plan = dayPlan(day.value);
  return answerTable(plan.ok ? succeed(dayPlanTable(plan.value)) : plan);
}
