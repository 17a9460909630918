import { isProblem } from "../isProblem";
import type { Problem } from "../problem";
import type { PieceRow } from "./pieceRow";

/**
 * How many pieces of a row are held on a day.
 *
 * Held from the out day on; on the back day no longer, unless `countBackDay`. Once back, what is still
 * held is the quantity less the quantity back, and a quantity back that is blank or 0 means that all came
 * back. Settled rows and rows without an out day are not held. A cell that cannot be read matters only
 * where the rest of the row does not decide already.
 */
export function quantityHeld(
  piece: Pick<PieceRow, "out" | "back" | "settled" | "quantity" | "quantityBack">,
  day: number,
  countBackDay = false,
): number | Problem {
  const out = piece.out;
  if (out === null || (typeof out === "number" && out > day)) return 0;
  const settled = piece.settled;
  if (settled === true) return 0;
  const back = piece.back;
  const isBack = typeof back === "number" && (countBackDay ? back < day : back <= day);
  const quantityBack = isBack ? piece.quantityBack || null : 0;
  if (quantityBack === null) return 0;
  if (isProblem(out)) return out;
  if (isProblem(back)) return back;
  if (isProblem(settled)) return settled;
  if (isProblem(quantityBack)) return quantityBack;
  const quantity = piece.quantity || 1;
  return isProblem(quantity) ? quantity : Math.max(0, quantity - quantityBack);
}
