import { latestMealStart } from "../../domain/day/latestMealStart";
import { fail } from "../../domain/fail";
import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { readHours } from "../../sheet/readHours";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { answer } from "../answer";

/**
 * The latest time at which the meal may begin.
 *
 * @customfunction MEALBY
 * @family The day
 * @answers By when must everybody eat?
 * @param call The time of day everybody is there, such as 08:00.
 * @param hours After how many hours a meal is due by your rule, such as 6.
 * @param [lastMeal] When the last meal ended; left out, there was none since call.
 * @shape One time of day: call and the hours, or the end of the last meal and the hours where that is later.
 * @units A time of day, past midnight counted on (26:00); a time more than twelve hours before call is the next morning's.
 * @blanks call and hours must be given; a call of 0 is midnight. lastMeal blank or 0: hours run from call (a meal that ended at midnight is 24:00).
 * @bounds Hours from 1 up, parts of an hour as 5.5. A meal that ended before call changes nothing.
 * @errors Hours of 0, or typed as a time (type 6, not 6:00), and text that is no time are #VALUE!.
 * @source Common practice, no source; published rules as examples under the caution.
 * @caution Which hours hold differs by place, work and agreement: California's Wage Order 12 for motion pictures (8 CCR 11120, form of 11/2023) has a meal no later than six hours after call, at least 30 minutes long, and the next no later than six hours after it; other work there often after five; the United Kingdom's Working Time Regulations 1998 have 20 minutes' break in a day of over six hours. This is no advice on them: ask what holds for your place, crew and talents, minors above all.
 * @example =TACK.MEALBY(TIME(8,0,0),6) gives 14:00
 * @example =TACK.MEALBY("08:00",6,"14:30") gives 20:30
 * @example =TACK.MEALBY("08:00",6,"07:30") gives 14:00
 * @example =TACK.MEALBY("20:00",5.5,"01:00") gives 30:30
 * @example =TACK.MEALBY("08:00",TIME(6,0,0)) fails type 6, not 6:00
 * @returns {any} The latest time for the meal.
 */
export function mealby(call: any, hours: any, lastMeal?: any): any {
  const callTime = needed(readTimeOfDay(call, "call"), "call", "the time everybody is there, such as 08:00");
  if (!callTime.ok) return answer(callTime);
  const due = needed(readHours(hours, "hours"), "hours", "the hours after which a meal is due, such as 6");
  if (!due.ok) return answer(due);
  if (due.value === 0)
    return answer(
      fail("argument-not-usable", { argument: "hours", given: "0", expected: "1 hour or more, such as 6" }),
    );
  const ended = readTimeOfDay(lastMeal, "lastMeal");
  if (!ended.ok) return answer(ended);
  // A blank cell reaches some hosts as 0.
  return answer(succeed(latestMealStart(callTime.value, due.value, ended.value || null)), "time");
}
