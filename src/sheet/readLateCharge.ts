import { fail } from "../domain/fail";
import type { LateCharge } from "../domain/loans/lateCharge";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readMoney } from "./readMoney";
import { readNumber } from "./readNumber";
import { readScalar } from "./readScalar";

// English, German, French, Italian, Spanish.
const A_DAY =
  /(?:(?:\/|\b(?:per|a|each|every|p|pro|je|par|al|por|cada)\b)[\s.]*(?:(?:calendar|kalender)\s*)?(?:day|d|tag|jour|giorno|d[ií]a)(?: (?:late|overdue))?|\b(?:daily|p\.?d|t[äa]glich))\.?$/i;
const ONCE =
  /\b(?:once|one[- ]?(?:off|time)|flat|fixed|einmalig|pauschal|une (?:seule )?fois|forfait|una tantum|una (?:volta|sola volta|vez))(?: (?:fee|charge|only))?\.?$/i;
const OF_VALUE = /\s*\b(?:of|vom|de|del?|du|della)\b.*\b(?:value|price|wert|valeur|valore|valor)\b\s*/i;
const FEE = 'text such as "5 a day", "5% a day" or "5% once", or a share a day below 1';
const CAP = 'an amount, or a share as text such as "50%"';

/**
 * What a lender asks for lateness ("2% a day", "£5 per day", "10% once", a number below 1: that share a day), or with `isCap` the
 * most that is asked ("£50", "50% of value", a number above 1).
 *
 * Blank is null; as a cap 0 is blank, as some hosts send blanks so. A bare amount does not say whether it is asked by the day, and a
 * number up to 1 may be a cell that shows 100%: both are argument-not-usable, as is what is below 0 and other text. Further problems:
 * number-ambiguous, error-in-cell.
 */
export function readLateCharge(raw: unknown, argument: string, isCap = false): Outcome<LateCharge | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null || (isCap && value === 0)) return succeed(null);
  const given = showGiven(value);
  const refused = fail("argument-not-usable", { argument, given, expected: isCap ? CAP : FEE });
  if (typeof value === "boolean") return refused;
  if (typeof value === "number") {
    const isUsable = isCap ? value > 1 && value < Infinity : value >= 0 && value < 1;
    return isUsable ? succeed({ amount: value, isShare: !isCap, isOnce: isCap, currency: null }) : refused;
  }

  const isOnce = isCap || ONCE.test(value);
  const isDaily = !isOnce && A_DAY.test(value);
  const amount = (isCap ? value : value.replace(isOnce ? ONCE : A_DAY, "")).replace(OF_VALUE, "").trim();
  if (amount.endsWith("%")) {
    const share = readNumber(amount, argument, isCap ? CAP : FEE);
    if (!share.ok) return share;
    if (share.value === null || share.value < 0) return refused;
    return succeed({ amount: share.value, isShare: true, isOnce, currency: null });
  }
  if (!isOnce && !isDaily) {
    // A number kept as text is the number.
    const number = readNumber(amount, argument, FEE);
    return number.ok && number.value !== null ? readLateCharge(number.value, argument) : refused;
  }
  const money = readMoney(amount, argument);
  if (!money.ok) return money.problem.reason === "number-ambiguous" ? money : refused;
  if (money.value === null || money.value.amount < 0) return refused;
  return succeed({ ...money.value, isShare: false, isOnce });
}
