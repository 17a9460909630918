import { fail } from "../../domain/fail";
import type { Outcome } from "../../domain/outcome";
import { showGiven } from "../../domain/showGiven";
import { succeed } from "../../domain/succeed";
import { readMoney } from "../../sheet/readMoney";

/** A limit as typed, read as money in a cell is; blank takes the limit away. */
export function readLimit(typed: string, currency: string): Outcome<number | null> {
  const argument = "Cover limit";
  const expected = `an amount above 0${currency === "" ? "" : ` in ${currency}`}, such as 100000, or nothing`;
  const money = readMoney(typed, argument);
  if (!money.ok) return money;
  if (money.value === null) return succeed(null);
  const isOtherCurrency = money.value.currency !== null && currency !== "" && money.value.currency !== currency;
  if (money.value.amount <= 0 || isOtherCurrency) {
    return fail("argument-not-usable", { argument, given: showGiven(typed), expected });
  }
  return succeed(money.value.amount);
}
