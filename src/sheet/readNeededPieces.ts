import type { Look } from "../domain/day/look";
import type { NeededPieces, NeedingLook } from "../domain/day/neededPiece";
import { isProblem } from "../domain/isProblem";
import { isOwnKit } from "./isOwnKit";
import { looksByNumber } from "./looksByNumber";
import { looksNamed } from "./looksNamed";
import { nameKey } from "./nameKey";
import { readPieces } from "./readPieces";
import type { Table } from "./table";
import { withOwnLooks } from "./withOwnLooks";

const NONE: readonly NeedingLook[] = [];

/** The pieces of a table with the looks that need them: those their Look cell names, and those that list the piece's number in their own Pieces. */
export function readNeededPieces(table: Table, looks: readonly Look[]): NeededPieces {
  const pieces = readPieces(table);
  const listed = new Set(looks.map(({ key }) => key));
  const looksOfCell = new Map<string, readonly NeedingLook[]>();
  const looksOfNumber = looksByNumber(looks);

  function namedIn(cell: string): readonly NeedingLook[] {
    let named = looksOfCell.get(cell);
    if (named === undefined) looksOfCell.set(cell, (named = looksNamed(cell, listed)));
    return named;
  }

  return {
    count: pieces.count,
    at: (index) => {
      const row = pieces.at(index);
      const cell = row.look;
      const named = typeof cell === "string" ? namedIn(cell) : NONE;
      const number = looksOfNumber.size > 0 ? row.piece : null;
      const own = typeof number === "string" ? looksOfNumber.get(nameKey(number)) : undefined;
      return {
        row,
        looks: own === undefined ? named : withOwnLooks(named, own),
      };
    },
    isBorrowed: ({ lender }) => lender === null || isProblem(lender) || !isOwnKit(lender),
  };
}
