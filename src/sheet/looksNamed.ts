import type { NeedingLook } from "../domain/day/neededPiece";
import { isUndecided } from "./isUndecided";
import { lookKey } from "./lookKey";

const LONGEST_SPAN = 30;
// Common practice, no source: said of a piece that is in no look of its own.
const NO_LOOK =
  /^(?:all|every|any|spare|spares|alt|alternative|back-?up|option|options|extra|extras|kit|tous|toutes|todos|todas|tutti|alle)\b/i;

/**
 * The looks that a cell of a piece names: one, a list ("3, 7", "3 & 7", "3/7") or a span of numbers ("1-3").
 *
 * Words that name no look ("spare", "all", "tbc") name none, and a look named twice is named once. A cell that is a listed look as a whole is that look, whatever
 * signs stand in it; `listed` has the keys of those.
 */
export function looksNamed(cell: string, listed: { has(key: string): boolean } | null): readonly NeedingLook[] {
  const whole = cell.trim();
  if (whole === "" || isUndecided(whole) || NO_LOOK.test(whole)) return [];
  const key = lookKey(whole);
  if (listed?.has(key) === true) return [{ name: whole, key }];
  const span = /^\D{0,8}(\d{1,3})\s*[-–—]\s*(\d{1,3})$/.exec(whole);
  if (span !== null && Number(span[2]) > Number(span[1]) && Number(span[2]) - Number(span[1]) <= LONGEST_SPAN) {
    const first = Number(span[1]);
    return Array.from({ length: Number(span[2]) - first + 1 }, (_, at) => ({
      name: String(first + at),
      key: String(first + at),
    }));
  }
  return whole
    .split(/[,;&+/\n]|\s(?:and|et|und|y|e)\s/i)
    .map((part) => part.trim())
    .filter((part) => part !== "" && !isUndecided(part) && !NO_LOOK.test(part))
    .map((name) => ({ name, key: lookKey(name) }))
    .filter(({ key: each }, at, all) => each !== "" && all.findIndex((other) => other.key === each) === at);
}
