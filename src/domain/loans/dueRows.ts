import { isoFromSerial } from "../dates/isoFromSerial";
import { fail } from "../fail";
import { groupsInOrder } from "../groupsInOrder";
import { isProblem } from "../isProblem";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import { unreadFields } from "../unreadFields";
import type { DueRow } from "./dueRow";
import type { PieceRows } from "./pieceRows";
import { quantityHeld } from "./quantityHeld";
import { returnDay } from "./returnDay";

const DECIDE = ["extendedTo", "due", "out", "back", "settled", "quantity", "quantityBack"] as const;

/**
 * The rows due from one day up to and with another and not back by then, soonest first, then in sheet order.
 *
 * A row of which it cannot be told stands after the others with the cells that cannot be read: leaving it out would hide a
 * piece that may be due. Problem: argument-not-usable for a span that ends before it begins.
 */
export function dueRows(pieces: PieceRows, from: number, to: number): Outcome<readonly DueRow[]> {
  if (to < from) {
    const expected = `a day on or after from, ${isoFromSerial(from)}`;
    return fail("argument-not-usable", { argument: "to", given: isoFromSerial(to), expected });
  }
  const dueIn: (DueRow & { readonly due: number })[] = [];
  const untold: DueRow[] = [];
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const due = returnDay(piece);
    if (due === null || (typeof due === "number" && (due < from || due > to))) continue;
    const quantity = quantityHeld(piece, to);
    if (quantity === 0) continue;
    if (typeof due === "number" && !isProblem(quantity)) dueIn.push({ row: piece.row, due });
    else untold.push({ row: piece.row, due: null, unread: unreadFields(piece, DECIDE) });
  }
  const soonestFirst = groupsInOrder(dueIn, ({ due }) => due);
  return succeed([...soonestFirst, untold].flat());
}
