import { nameKey } from "../../../sheet/nameKey";
import type { HeldPiece } from "./heldPieces";
import { fieldText } from "./fieldText";

/** A lender's pieces, under the name as first spelt. */
export interface LenderPieces {
  /** What the spellings of the name share; "" for pieces whose lender is not said. */
  readonly key: string;
  readonly name: string;
  readonly pieces: readonly HeldPiece[];
}

/** Pieces sorted by lender, lenders in the order they first appear; spellings that share a key are one, as in LENDERTOTALS. */
export function byLender(pieces: readonly HeldPiece[]): readonly LenderPieces[] {
  const lenders = new Map<string, { key: string; name: string; pieces: HeldPiece[] }>();
  for (const piece of pieces) {
    const name = fieldText(piece.row.lender);
    const key = nameKey(name) || name;
    let lender = lenders.get(key);
    if (lender === undefined) lenders.set(key, (lender = { key, name, pieces: [] }));
    lender.pieces.push(piece);
  }
  return [...lenders.values()];
}
