import { amountFromTenThousandths } from "./amountFromTenThousandths";
import { tenThousandths } from "./tenThousandths";

/**
 * What a shop charges where less was kept than it asks: its share of what is short of the share to be kept, else 0.
 *
 * Shares from 0 to 1, amounts of 0 or more; the result to the ten-thousandth.
 */
export function keepCost(taken: number, kept: number, keepShare: number, restockShare: number): number {
  // A share times an amount may miss its cent by a binary fraction, and would charge for it.
  const short = Math.round(keepShare * tenThousandths(taken)) - tenThousandths(kept);
  return short <= 0 ? 0 : amountFromTenThousandths(Math.round(restockShare * short));
}
