import { isProblem } from "../isProblem";
import type { Problem } from "../problem";
import { amountFromTenThousandths } from "../value/amountFromTenThousandths";
import { valueHeld } from "../value/valueHeld";
import type { PieceRow } from "./pieceRow";
import type { PieceRows } from "./pieceRows";
import type { Shortage } from "./shortage";

/** Whether a condition on return tells of damage, beside the condition on loan; null where that is blank. */
type SaysDamage = (conditionOut: string | null, conditionBack: string) => boolean;

/**
 * The rows that came back with fewer pieces than went out, or damaged, in sheet order.
 *
 * A quantity back that is blank or 0 means that all came back. What is settled (lost, bought, gifted) is missing no longer. Where
 * it cannot be told whether a row is back or settled, it is listed with that problem if anything would be short or damaged.
 */
export function shortages(pieces: PieceRows, saysDamage: SaysDamage): readonly Shortage[] {
  const found: Shortage[] = [];
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const { back } = piece;
    if (back === null) continue;
    const isDamaged = damageOf(piece, saysDamage);
    const short = piecesShort(piece);
    if (short === 0 && isDamaged === false) continue;
    const { settled } = piece;
    if (settled === true) continue;
    const piecesMissing = isProblem(back) ? back : isProblem(settled) ? settled : short;
    found.push({ row: piece.row, piecesMissing, isDamaged, valueMissing: valueOf(piece, piecesMissing) });
  }
  return found;
}

function damageOf(piece: PieceRow, saysDamage: SaysDamage): boolean | Problem {
  const { conditionBack } = piece;
  if (conditionBack === null) return false;
  if (isProblem(conditionBack)) return conditionBack;
  const { conditionOut } = piece;
  if (!isProblem(conditionOut)) return saysDamage(conditionOut, conditionBack);
  return saysDamage(null, conditionBack) && conditionOut;
}

function piecesShort(piece: PieceRow): number | Problem {
  const quantityBack = piece.quantityBack || null;
  if (quantityBack === null || isProblem(quantityBack)) return quantityBack ?? 0;
  const quantity = piece.quantity || 1;
  return isProblem(quantity) ? quantity : Math.max(0, quantity - quantityBack);
}

function valueOf(piece: PieceRow, piecesMissing: number | Problem): Shortage["valueMissing"] {
  if (isProblem(piecesMissing) || piecesMissing === 0) return piecesMissing;
  const value = valueHeld(piece, piecesMissing);
  return typeof value === "number" ? amountFromTenThousandths(value) : value;
}
