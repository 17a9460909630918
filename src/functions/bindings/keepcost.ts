import { fail } from "../../domain/fail";
import { needed } from "../../domain/needed";
import { succeed } from "../../domain/succeed";
import { keepCost } from "../../domain/value/keepCost";
import { readAmount } from "../../sheet/readAmount";
import { readShare } from "../../sheet/readShare";
import { answer } from "../answer";

/**
 * What a shop charges where less was kept than it asks for.
 *
 * @customfunction KEEPCOST
 * @family Value at risk
 * @answers What does it cost to take nearly everything back?
 * @param taken The value of all that was taken.
 * @param kept The value of what is kept; blank or 0: nothing.
 * @param [keepShare] The share of what was taken that the shop asks to be kept, such as 0.3 or "30%"; left out: all, so that whatever goes back is charged for.
 * @param [restockShare] The share of what is short that the shop charges, such as 0.2 or "20%"; left out: all of it.
 * @shape One amount; 0 when enough is kept.
 * @units Money in the currency of taken: restockShare of (keepShare of taken, less kept).
 * @blanks Taken blank, and both shares blank: #VALUE!. Kept blank: 0.
 * @bounds Amounts of 0 or more; shares from 0 to 1.
 * @errors An amount below 0, kept in another currency than taken, or a share above 1 is #VALUE! (30 is no share: write 30% or 0.3).
 * @source Common practice, no source: house accounts for stylists may ask that a share of what was taken is kept, or charge for restocking. No share is usual enough to be filled in.
 * @caution The account's own terms decide, also on what counts as taken and whether tax is in it; this is no tax advice.
 * @example =TACK.KEEPCOST(5000,800,"30%","20%") gives 140
 * @example =TACK.KEEPCOST(5000,1500,0.3,0.2) gives 0
 * @example =TACK.KEEPCOST(1000,200,,"20%") gives 160
 * @example =TACK.KEEPCOST(5000,800,30,20) fails keepShare: "30" cannot be used; give a share from 0 to 1
 * @example =TACK.KEEPCOST("£5,000","800 €",0.3,0.2) fails kept: "800 EUR" cannot be used; give an amount in GBP
 * @example =TACK.KEEPCOST(5000,800) fails keepShare is blank
 * @returns {any} The charge.
 */
export function keepcost(taken: any, kept: any, keepShare?: any, restockShare?: any): any {
  const takenAmount = needed(readAmount(taken, "taken"), "taken", "the value of all that was taken, such as 5000");
  if (!takenAmount.ok) return answer(takenAmount);
  const keptAmount = readAmount(kept, "kept", taken);
  if (!keptAmount.ok) return answer(keptAmount);
  const keep = readShare(keepShare, "keepShare");
  if (!keep.ok) return answer(keep);
  const restock = readShare(restockShare, "restockShare");
  if (!restock.ok) return answer(restock);
  if (keep.value === null && restock.value === null) {
    const expected = 'the share that the shop asks to be kept, such as "30%", or restockShare, what it charges';
    return answer(fail("argument-missing", { argument: "keepShare", expected }));
  }
  const cost = keepCost(takenAmount.value, keptAmount.value ?? 0, keep.value ?? 1, restock.value ?? 1);
  return answer(succeed(cost), "money");
}
