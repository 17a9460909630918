import type { NeedingLook } from "../domain/day/neededPiece";
import type { Look } from "../domain/day/look";
import { nameKey } from "./nameKey";

/** The looks whose own Pieces list a piece number, by the nameKey of the number. */
export function looksByNumber(looks: readonly Look[]): ReadonlyMap<string, readonly NeedingLook[]> {
  const byNumber = new Map<string, NeedingLook[]>();
  for (const { pieces, label, key } of looks) {
    for (const number of pieces) {
      const known = byNumber.get(nameKey(number));
      const look = { name: String(label), key };
      if (known === undefined) byNumber.set(nameKey(number), [look]);
      else known.push(look);
    }
  }
  return byNumber;
}
