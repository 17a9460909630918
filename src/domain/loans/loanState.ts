import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { lastDayHeld } from "./lastDayHeld";

/** Where a loan stands, in the words shown. */
export type LoanState = "not out" | "out" | "due soon" | "due today" | "late" | "back" | "back late" | "settled";

/**
 * Where the loan of a piece stands on a day.
 *
 * Settled where it is, whatever the days say. Else not out without a day out or before it; once back, late or not by the due day; else late past the due day, due today on it,
 * due soon from `warnDays` before it on, and out. Without a due day it can only be out or back. Problem: argument-missing without
 * asOf while it is out and not back.
 */
export function loanState(
  out: number | null,
  due: number | null,
  back: number | null,
  asOf: number | null,
  warnDays: number,
  isSettled = false,
): Outcome<LoanState> {
  if (isSettled) return succeed("settled");
  if (out === null || (asOf !== null && out > asOf)) return succeed("not out");
  const end = lastDayHeld(back, asOf);
  if (!end.ok) return end;
  if (back !== null && end.value === back) return succeed(due !== null && back > due ? "back late" : "back");
  if (due === null) return succeed("out");
  const daysLeft = due - end.value;
  if (daysLeft < 0) return succeed("late");
  if (daysLeft === 0) return succeed("due today");
  return succeed(daysLeft <= warnDays ? "due soon" : "out");
}
