import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import type { CoverLimit } from "../domain/value/coverLimit";
import { readMoney } from "./readMoney";

/** The limit of a cover, an amount above 0, also as text with its currency. Blank is null. Problems: those of readMoney, argument-not-usable. */
export function readCoverLimit(raw: unknown, argument: string): Outcome<CoverLimit | null> {
  const money = readMoney(raw, argument);
  if (!money.ok || money.value === null || money.value.amount > 0) return money;
  const expected = "an amount above 0, such as 100000";
  return fail("argument-not-usable", { argument, given: showGiven(money.value.amount), expected });
}
