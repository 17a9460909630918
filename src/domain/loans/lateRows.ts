import { groupsInOrder } from "../groupsInOrder";
import { isProblem } from "../isProblem";
import { valueHeld } from "../value/valueHeld";
import type { LateRow } from "./lateRow";
import type { PieceRows } from "./pieceRows";
import { quantityHeld } from "./quantityHeld";
import { returnDay } from "./returnDay";

interface RankedRow extends LateRow {
  readonly daysLate: number;
  readonly valueTenThousandths: number;
}

/**
 * The rows that are out and past their due day, most days late first, then most valuable (by what is still
 * out), then in sheet order. Due on the day itself is not late, and a row with no due day is not late.
 *
 * A row of which it cannot be told, since its due day or another cell that decides cannot be read, stands
 * after the others with the problem: leaving it out would hide a piece that may be late.
 */
export function lateRows(pieces: PieceRows, asOf: number): readonly LateRow[] {
  const late: RankedRow[] = [];
  const untold: LateRow[] = [];
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const due = returnDay(piece);
    if (due === null || (typeof due === "number" && due >= asOf)) continue;
    const quantity = quantityHeld(piece, asOf);
    if (quantity === 0) continue;
    if (isProblem(due) || isProblem(quantity)) {
      untold.push({ row: piece.row, daysLate: isProblem(due) ? due : (quantity as LateRow["daysLate"]) });
      continue;
    }
    const value = valueHeld(piece, quantity);
    late.push({ row: piece.row, daysLate: asOf - due, valueTenThousandths: typeof value === "number" ? value : 0 });
  }
  const ranked: LateRow[] = [];
  for (const asLate of groupsInOrder(late, ({ daysLate }) => -daysLate)) {
    // Array.prototype.sort keeps the order of equals, which is the order of the sheet.
    asLate.sort((a, b) => b.valueTenThousandths - a.valueTenThousandths);
    for (const row of asLate) ranked.push(row);
  }
  for (const row of untold) ranked.push(row);
  return ranked;
}
