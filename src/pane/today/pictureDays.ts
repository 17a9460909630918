import { returnDay } from "../../domain/loans/returnDay";
import type { PieceRow } from "../../domain/loans/pieceRow";

/** A narrow pane still tells this many bars apart. */
const MOST_DAYS = 35;
/** Of which, where there are more, so many stand before the day looked at. */
const MOST_BEFORE = 24;

/**
 * The days of the picture: from the first day anything went out to the last day anything is due or came back,
 * the day looked at among them, and at most five weeks.
 */
export function pictureDays(rows: readonly PieceRow[], asOf: number): readonly number[] {
  let first = asOf;
  let last = asOf;
  for (const row of rows) {
    if (typeof row.out === "number") first = Math.min(first, row.out);
    const due = returnDay(row);
    for (const day of [row.out, row.back, due]) if (typeof day === "number") last = Math.max(last, day);
  }
  const from = Math.max(first, asOf - MOST_BEFORE);
  const count = Math.min(last - from + 1, MOST_DAYS);
  return Array.from({ length: count }, (_, index) => from + index);
}
