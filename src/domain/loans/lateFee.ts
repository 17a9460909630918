import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { isOtherCurrency } from "../value/isOtherCurrency";
import type { LateCharge } from "./lateCharge";

const EXACT_DIGITS = 14;

/**
 * The fee for so many days late: simple and not compounded, on the value passed, and no more than the cap; unrounded.
 *
 * Nothing is asked for 0 days late. Problems: nothing-to-compute without the days, and without a value where a share is asked;
 * argument-not-usable for a value below 0 and for amounts that name two currencies.
 */
export function lateFee(
  value: { readonly amount: number; readonly currency: string | null } | null,
  daysLate: number | null,
  fee: LateCharge,
  cap: LateCharge | null,
): Outcome<number> {
  if (daysLate === null) return fail("nothing-to-compute", { what: "the late fee", fill: "daysLate" });
  if (value !== null && value.amount < 0) {
    const expected = "an amount of 0 or more";
    return fail("argument-not-usable", { argument: "value", given: String(value.amount), expected });
  }
  let currency = value?.currency ?? null;
  for (const [argument, charge] of [["fee", fee] as const, ["cap", cap] as const]) {
    const own = charge?.currency ?? null;
    if (own !== null && currency !== null && isOtherCurrency(own, currency)) {
      const expected = `an amount in ${currency}, as before it`;
      return fail("argument-not-usable", { argument, given: `${charge!.amount} ${own}`, expected });
    }
    currency ??= own;
  }
  const moneyOf = (charge: LateCharge): number | null => {
    if (!charge.isShare) return charge.amount;
    return value === null ? null : charge.amount * value.amount;
  };
  if (daysLate === 0) return succeed(0);
  const each = moneyOf(fee);
  const most = cap === null ? Infinity : moneyOf(cap);
  if (each === null || most === null) return fail("nothing-to-compute", { what: "the late fee", fill: "value" });
  const asked = Math.min(most, each * (fee.isOnce ? 1 : daysLate));
  // 640 x 0.02 x 3 is 38.400000000000006: the last digits are the computer's, not the lender's.
  return succeed(Number(asked.toPrecision(EXACT_DIGITS)));
}
