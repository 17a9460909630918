import type { Problem } from "../problem";
import { afterProblem } from "./afterProblem";
import { crewProblem } from "./crewProblem";
import type { Day } from "./day";
import { fixedProblem } from "./fixedProblem";
import type { Look } from "./look";
import { repeatedLookProblem } from "./repeatedLookProblem";
import { twoDaysProblem } from "./twoDaysProblem";

/** Why no plan can be made of a day, or null; `inOrder` is its looks in the order they are shot. What only that order is to blame for comes last. */
export function dayProblem(day: Day, inOrder: readonly Look[]): Problem | null {
  return (
    twoDaysProblem(day.looks) ??
    repeatedLookProblem(day.looks) ??
    fixedProblem(day.looks) ??
    crewProblem(day) ??
    afterProblem(inOrder)
  );
}
