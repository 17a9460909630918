import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { garmentKey } from "./garmentKey";
import { readText } from "./readText";

/** "2 x ring" and "2 rings" are two; a larger number without a sign says something else ("70 denier tights"). */
const COUNTED = /^(?:(\d{1,2})\s*[x×]\s*|([2-9])\s+)?(.*)$/i;

const AND = /[&+]| (?:and|et|y|e|und) /i;

/**
 * What somebody wears, as the kind of each piece: cells, or text split at commas, semicolons and line ends, and at "and" and the
 * like unless what stands there is one piece ("black and white shirt").
 *
 * A kind is one that readKind knows or one of `ownKinds` (keys as garmentKey gives them). Blanks, and 0 as some hosts send
 * them, are passed over. Problems: argument-not-usable for a piece whose kind is not known, error-in-cell.
 */
export function readGarments(
  cells: readonly (readonly unknown[])[] | null,
  argument: string,
  ownKinds: ReadonlyMap<string, number>,
): Outcome<readonly string[]> {
  const kinds: string[] = [];
  function isKnown(piece: string): boolean {
    const { kind, known } = garmentKey(piece);
    return known || ownKinds.has(kind);
  }
  function atAnd(part: string): readonly string[] {
    const pieces = part.split(AND);
    return isKnown(part) && !pieces.every(isKnown) ? [part] : pieces;
  }
  for (const raw of (cells ?? []).flat()) {
    const text = readText(raw, argument);
    if (!text.ok) return text;
    if (text.value === null || text.value === "0") continue;
    for (const part of text.value.split(/[,;\n]/).flatMap(atAnd)) {
      const [, times, few, piece = ""] = COUNTED.exec(part.trim())!;
      if (piece === "") continue;
      if (!isKnown(piece)) {
        const expected = 'a kind of garment such as "dress", or give its minutes in minutesByKind';
        return fail("argument-not-usable", { argument, given: showGiven(piece), expected });
      }
      for (let count = Number(times ?? few ?? 1); count > 0; count--) kinds.push(garmentKey(piece).kind);
    }
  }
  return succeed(kinds);
}
