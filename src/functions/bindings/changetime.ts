import changeMinutesData from "../../../shared/change-minutes.json";
import { changeMinutes } from "../../domain/day/changeMinutes";
import { fail } from "../../domain/fail";
import { succeed } from "../../domain/succeed";
import { readGarments } from "../../sheet/readGarments";
import { readMinutesByKind } from "../../sheet/readMinutesByKind";
import { answer } from "../answer";
import { rangeArgument } from "../rangeArgument";

/**
 * Minutes to change from one look to the next, by the pieces that differ.
 *
 * @customfunction CHANGETIME
 * @family The day
 * @answers How long does the change take?
 * @param wearing The kinds of garment worn now: cells, or one text such as "shirt, trousers, shoes".
 * @param next The kinds of garment of the next look, written the same way.
 * @param [minutesByKind] Your own minutes for one piece taken off or put on: two columns, kind and minutes.
 * @shape One number.
 * @units Minutes; a pair of shoes is one piece.
 * @blanks wearing blank: nothing has to come off. next blank: everything only comes off. minutesByKind blank: the usual minutes. Both looks blank: #N/A.
 * @bounds Hair and make-up count where only one of the looks names them: write "hair" or "make-up" into next where it is done anew. A kind both looks wear equally often stays on and counts nothing. To count a full change all the same (one dress for another), add the change to nothing and the change from nothing: CHANGETIME(wearing,"")+CHANGETIME("",next).
 * @errors A piece whose kind is not known and stands not in minutesByKind, and minutes that are no number of 0 or of 1 and more, are #VALUE!.
 * @source Common practice, no source: minutes for each kind chosen so that a change of one garment takes about 5 minutes and a change of everything 20 and over; your own figures always win.
 * @example =TACK.CHANGETIME("shirt, trousers, shoes","shirt, skirt, shoes") gives 4.5
 * @example =TACK.CHANGETIME({"dress";"boots";"coat"},{"suit";"shoes"},{"Dress",6;"Boots",4}) gives 16.5
 * @example =TACK.CHANGETIME("","2 rings, dress") gives 4.5
 * @example =TACK.CHANGETIME("shirt, trousers, shoes","dress, shoes, hair and make-up") gives 17.5
 * @example =TACK.CHANGETIME("shirt, harness","shirt") fails wearing: "harness" cannot be used
 * @returns {any} Minutes.
 */
export function changetime(wearing: any[][], next: any[][], minutesByKind?: any[][]): any {
  const own = readMinutesByKind(rangeArgument(minutesByKind));
  if (!own.ok) return answer(own);
  const off = readGarments(rangeArgument(wearing), "wearing", own.value);
  if (!off.ok) return answer(off);
  const on = readGarments(rangeArgument(next), "next", own.value);
  if (!on.ok) return answer(on);
  if (off.value.length + on.value.length === 0)
    return answer(fail("nothing-to-compute", { what: "a change", fill: "wearing or next" }));
  const usual: Readonly<Record<string, number>> = changeMinutesData.minutes;
  return answer(succeed(changeMinutes(off.value, on.value, (kind) => own.value.get(kind) ?? usual[kind] ?? 0)));
}
