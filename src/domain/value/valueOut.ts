import { fail } from "../fail";
import { isProblem } from "../isProblem";
import type { PieceRows } from "../loans/pieceRows";
import { quantityHeld } from "../loans/quantityHeld";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { amountFromTenThousandths } from "./amountFromTenThousandths";
import { valueHeld } from "./valueHeld";

/**
 * The value of all pieces held on a day, in the one currency they share.
 *
 * Pieces without a value add nothing. A cell that decides and cannot be read, and a second currency, are
 * problems that name the row: a total that leaves something out in silence would mislead about the cover.
 */
export function valueOut(pieces: PieceRows, day: number, countBackDay: boolean): Outcome<number> {
  let total = 0;
  let first: { readonly currency: string | null; readonly row: number } | null = null;
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const quantity = quantityHeld(piece, day, countBackDay);
    if (quantity === 0) continue;
    if (isProblem(quantity)) return { ok: false, problem: quantity };
    const value = valueHeld(piece, quantity);
    if (value === null) continue;
    if (isProblem(value)) return { ok: false, problem: value };
    const { currency, row } = piece;
    if (isProblem(currency)) return { ok: false, problem: currency };
    first ??= { currency, row };
    if (currency !== first.currency)
      return fail("currencies-mixed", {
        rowNumber: row + 1,
        currency,
        firstRowNumber: first.row + 1,
        firstCurrency: first.currency,
      });
    total += value;
  }
  return succeed(amountFromTenThousandths(total));
}
