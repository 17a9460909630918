import type { CurrencyValue } from "./CurrencyValue";
import { isHeld } from "./isHeld";

/** Whether anything is out in that currency on the day or goes out after it; what all came back before is no risk any more. */
export function isOutFrom(value: CurrencyValue, asOf: number): boolean {
  return isHeld(value) || value.days.some(({ day, valueOut }) => day > asOf && valueOut > 0);
}
