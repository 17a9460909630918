import { isProblem } from "../isProblem";
import type { Problem } from "../problem";
import type { PieceRow } from "./pieceRow";
import { quantityHeld } from "./quantityHeld";

/**
 * Why nothing of a piece is on the rail on a day: it has no out day, goes out later, or is back by then; null where it is there.
 *
 * On its back day it is no longer there, as quantityHeld counts. A settled piece was bought, given or lost, which the row does
 * not say, so it is never reported. Problem: a cell on which that turns and that cannot be read.
 */
export function whyNotThere(
  piece: Pick<PieceRow, "out" | "back" | "settled" | "quantity" | "quantityBack">,
  day: number,
): "never out" | "out later" | "already back" | Problem | null {
  if (piece.settled === true) return null;
  const held = quantityHeld(piece, day);
  if (isProblem(held)) return held;
  if (held > 0) return null;
  const out = piece.out;
  return out === null ? "never out" : typeof out === "number" && out > day ? "out later" : "already back";
}
