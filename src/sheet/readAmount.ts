import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { isOtherCurrency } from "../domain/value/isOtherCurrency";
import { readMoney } from "./readMoney";

/**
 * An amount of money of 0 or more, in whatever currency where `beside`, an amount that it is reckoned with, names none. Blank is
 * null. Problems: those of readMoney, argument-not-usable below 0 and in another currency.
 */
export function readAmount(raw: unknown, argument: string, beside: unknown = null): Outcome<number | null> {
  const money = readMoney(raw, argument);
  if (!money.ok) return money;
  const amount = money.value?.amount ?? null;
  const sign = money.value?.currency ?? null;
  const other = sign === null ? null : currencyOf(beside);
  if (sign !== null && other !== null && isOtherCurrency(sign, other)) {
    const expected = `an amount in ${other}, as before it`;
    return fail("argument-not-usable", { argument, given: `${amount} ${sign}`, expected });
  }
  if (amount === null || amount >= 0) return succeed(amount);
  return fail("argument-not-usable", { argument, given: showGiven(amount), expected: "an amount of 0 or more" });
}

function currencyOf(raw: unknown): string | null {
  const money = readMoney(raw, "");
  return money.ok ? (money.value?.currency ?? null) : null;
}
