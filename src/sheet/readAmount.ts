import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readMoney } from "./readMoney";

/** An amount of money of 0 or more, whatever its currency. Blank is null. Problems: those of readMoney, argument-not-usable below 0. */
export function readAmount(raw: unknown, argument: string): Outcome<number | null> {
  const money = readMoney(raw, argument);
  if (!money.ok) return money;
  const amount = money.value?.amount ?? null;
  if (amount === null || amount >= 0) return succeed(amount);
  return fail("argument-not-usable", { argument, given: showGiven(amount), expected: "an amount of 0 or more" });
}
