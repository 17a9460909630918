import type { Outcome } from "../domain/outcome";
import { readNumberBetween } from "./readNumberBetween";
import { readScalar } from "./readScalar";

const KM_PER_MILE = 1.609344;
const WITH_UNIT = /^(.*?)\s*(?:mi|miles?|(kms?|kilomet(?:re|er)s?))\.?$/i;

/** Miles from 0 to 1,000,000: a number, or text such as "12 mi" or "20 km" (1.609344 km a mile). Blank is null. Problems as for readNumberBetween. */
export function readMiles(raw: unknown, argument: string): Outcome<number | null> {
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const [, figures, km] = WITH_UNIT.exec(String(scalar.value)) ?? [];
  const number = readNumberBetween(figures ?? scalar.value, argument, 0, 1_000_000, " miles, such as 12.5 or 20 km");
  return number.ok && number.value !== null && km !== undefined
    ? { ok: true, value: number.value / KM_PER_MILE }
    : number;
}
