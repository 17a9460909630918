import { sayProblem } from "../../domain/wording";
import type { CoverNote } from "../../sheet/coverNote";
import { coverStated } from "../../sheet/coverStated";
import { sayList } from "../sayList";

/** The statements of a cover that are used for none of the currencies held, each with the sentence that says why. */
export function coversUnread(
  notes: readonly CoverNote[],
  currencies: readonly string[],
): readonly { readonly note: CoverNote; readonly sentence: string }[] {
  const isUsed = (note: CoverNote): boolean =>
    currencies.some((currency) => {
      const { everyDay, byDay } = coverStated(
        [note],
        note.covers,
        currency === "" ? null : currency,
        currencies.length === 1,
      );
      return everyDay !== null || byDay.size > 0;
    });
  return notes.flatMap((note) => {
    if (!note.limit.ok) return [{ note, sentence: `${sayProblem(note.limit.problem)}` }];
    if (currencies.length === 0 || isUsed(note)) return [];
    const { currency } = note.limit.value;
    const named = currencies.map((each) => (each === "" ? "no currency" : each));
    const said =
      currency === null || currency.length < 3 ? "It does not say of which currency" : `It is in ${currency}`;
    return [{ note, sentence: `${said}, and what is held is in ${sayList(named)}.` }];
  });
}
