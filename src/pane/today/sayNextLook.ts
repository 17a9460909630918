import type { Day } from "../../domain/day/day";
import { dayPlan } from "../../domain/day/dayPlan";
import { nextLook } from "../../domain/day/nextLook";
import { sayClock } from "../../domain/sayClock";
import { sayProblem } from "../../domain/wording";
import { sayMinutes } from "../sayMinutes";
import { nameLook } from "./nameLook";

/** Which look is to be got ready at a time of day and how long until it is called, as NEXTLOOK gives it; `now` is a fraction of a day. */
export function sayNextLook(day: Day, now: number): string {
  const next = nextLook(day, now);
  if (!next.ok) return sayProblem(next.problem);
  if (next.value === null) return "Every look is shot.";
  const { planned, minutesUntilCalled } = next.value;
  const { look, shootFrom, changeFrom } = planned;
  const name = nameLook(look.label, look.talentText);
  const called = minutesUntilCalled < 1 ? "can be called now" : `is called in ${sayMinutes(minutesUntilCalled)}`;
  // Longer than the first look takes, and none is said to be shot: the sheet has not been kept up.
  const isBehind = day.looks.every(({ shotAt }) => shotAt === null) && isPastFirst(day, now);
  const hint = isBehind ? " No look says yet that it was shot: fill Shot at as you go, and this follows." : "";
  return `At ${sayClock(now)}: ${name} ${called}, at ${sayClock(shootFrom)}; get ready from ${sayClock(changeFrom)}.${hint}`;
}

function isPastFirst(day: Day, now: number): boolean {
  const plan = dayPlan(day);
  const ends = plan.ok ? plan.value.looks[0]?.shootUntil : undefined;
  return ends !== undefined && now > ends;
}
