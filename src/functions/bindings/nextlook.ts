import { nextLook } from "../../domain/day/nextLook";
import { nextLookTable } from "../../domain/day/nextLookTable";
import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { answerTable } from "../answerTable";
import { dayArguments } from "../dayArguments";

/**
 * The next look to get ready, for whom, and the minutes until it is called.
 *
 * @customfunction NEXTLOOK
 * @family The day
 * @answers What is next, and how long have we got?
 * @param looks The looks of one day with their heading row; needs Look, Talent, Shooting and Change, and Shot at to say what has happened.
 * @param now The time now: a clock cell such as NOW(), whose time counts, or 10:40.
 * @param call The time of day everybody is there, such as 09:00.
 * @param [people] Two columns, what and how many: dressers, chairs, cameras, meal after hours, meal minutes, crossing minutes between sets, hand-over minutes of a shared piece.
 * @param [changes] Minutes of change from look to look (row to column), with the look numbers as heading row and column.
 * @param [columns] Which heading means what, where yours is not understood, such as "shotAt=Done".
 * @shape A table of one row that spills: Look, Talent, Change from, Minutes. The first look without a Shot at; Change from is when its hair, make-up or change can begin; Minutes are those until it is called, when its shot can begin. Every look shot: the heading row alone.
 * @units Change from is a time of day, past midnight counted on; Minutes are whole, rounded down.
 * @blanks Shot at blank, or later than now: not yet shot. now blank or 0: #VALUE!. Else as for DAYPLAN.
 * @bounds One day at a time. What was shot stays where it was; all else is timed as in DAYPLAN, but nothing of it before now: who is in the chair already is ready sooner than this says. A now more than twelve hours before call is the next morning's.
 * @errors As for DAYPLAN, and a now that is no time of day, are #VALUE!.
 * @source Timing as in DAYPLAN; that the next look is ready before it is called is common practice, no source.
 * @caution Hurried changes injure and tear. As for DAYPLAN, no advice on meals, hours or rest: ask what holds for your place, crew and talents.
 * @example =TACK.NEXTLOOK({"Look","Talent","Change","Shooting","Shot at";1,"Mina",15,30,"09:20";2,"Teo",20,25,"";3,"Mina",10,30,""},TIME(9,25,0),TIME(9,0,0)) gives {"Look","Talent","Change from","Minutes";2,"Teo","09:25",25}
 * @example =TACK.NEXTLOOK({"Look","Talent","Change","Shooting","Shot at";1,"Mina",15,30,"09:20";2,"Mina",20,25,""},46111.40625,"09:00") gives {"Look","Talent","Change from","Minutes";2,"Mina","09:50",25}
 * @example =TACK.NEXTLOOK({"Look","Talent","Change","Shooting","Shot at";1,"Mina",15,30,"09:20"},"10:00","09:00") gives {"Look","Talent","Change from","Minutes"}
 * @example =TACK.NEXTLOOK({"Look","Talent","Change","Shooting";1,"Mina",15,30},"soon","09:00") fails now: "soon" cannot be used
 * @returns {any[][]} One row, or none.
 */
export function nextlook(
  looks: any[][],
  now: any,
  call: any,
  people?: any[][],
  changes?: any[][],
  columns?: any,
): any[][] {
  // A clock cell that is blank reaches some hosts as 0.
  const time = needed(
    readTimeOfDay(now === 0 ? null : now, "now"),
    "now",
    "the time now, such as 10:40 or a clock cell",
  );
  if (!time.ok) return answerTable(time);
  const day = dayArguments(looks, call, people, changes, columns);
  if (!day.ok) return answerTable(day);
  const next = nextLook(day.value, time.value);
  return answerTable(next.ok ? succeed(nextLookTable(next.value)) : next);
}
