import { namePiece } from "../../today/namePiece";
import { fieldText } from "./fieldText";
import type { HeldPiece } from "./heldPieces";

/** Shorter names stand in too many other words. */
const SHORTEST_NAME = 3;

/**
 * A sentence for each piece whose texts that go to its lender name somebody who wears a piece, since that is not the lender's to know.
 *
 * Whole names count, in any case; `held` are all pieces, `shown` those on the slips.
 */
export function talentNamed(shown: readonly HeldPiece[], held: readonly HeldPiece[]): readonly string[] {
  const names = [...new Set(held.map(({ row }) => fieldText(row.talent)))].filter(
    ({ length }) => length >= SHORTEST_NAME,
  );
  const phrases = names.map((name) => ({ name, phrase: wordsOf(name) }));
  return shown.flatMap(({ row }) => {
    const texts = wordsOf([row.description, row.conditionOut, row.conditionBack].map(fieldText).join(" . "));
    const named = phrases.find(({ phrase }) => phrase.trim() !== "" && texts.includes(phrase));
    if (named === undefined) return [];
    return [`${namePiece(row)} names ${named.name}; a lender's slip should not: change the text.`];
  });
}

/** The words of a text with one space before, between and after them. */
function wordsOf(text: string): string {
  return ` ${text
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .join(" ")} `.replace(/ +/g, " ");
}
