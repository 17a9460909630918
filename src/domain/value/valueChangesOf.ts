import { groupFinder } from "../groupFinder";
import { isProblem } from "../isProblem";
import type { PieceRow } from "../loans/pieceRow";
import type { PieceRows } from "../loans/pieceRows";
import { quantityHeld } from "../loans/quantityHeld";
import type { ValueChanges } from "./valueChanges";
import { valueHeld } from "./valueHeld";

/**
 * The changes in what is held, day by day, one entry for each currency in the order first seen; rows that are never held are in none.
 *
 * How many of a row are held changes at most twice, on its out day and its back day (or the day after, where the back
 * day counts), so each is asked of quantityHeld once a span and every day of the span agrees with VALUEOUT.
 */
export function valueChangesOf(pieces: PieceRows, countBackDay: boolean): readonly ValueChanges[] {
  const changesIn = groupFinder(
    (name) => name,
    (_, currency): ValueChanges => ({ currency, byDay: new Map(), doubts: [], firstValuedRow: null }),
  );
  // Rows of one currency mostly stand together.
  let last: ValueChanges | null = null;
  const changesOf = (currency: ValueChanges["currency"]): ValueChanges =>
    last !== null && last.currency === currency ? last : (last = changesIn(null, currency));
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const out = piece.out;
    if (out === null) continue;
    const back = piece.back;
    // Where the out day cannot be read the piece may have been out on any day.
    const start = typeof out === "number" ? out : 1;
    const end = typeof back === "number" ? Math.max(start, countBackDay ? back + 1 : back) : Infinity;
    if (end > start) addSpan(changesOf, piece, start, end, countBackDay);
    if (end < Infinity) addSpan(changesOf, piece, end, Infinity, countBackDay);
  }
  return changesIn.all;
}

function addSpan(
  changesOf: (currency: ValueChanges["currency"]) => ValueChanges,
  piece: PieceRow,
  from: number,
  until: number,
  countBackDay: boolean,
): void {
  const quantity = quantityHeld(piece, from, countBackDay);
  if (quantity === 0) return;
  const changes = changesOf(piece.currency);
  const row = piece.row;
  if (isProblem(quantity)) {
    changes.doubts.push({ row, from, until, ofPieces: true, problem: quantity });
    return;
  }
  const value = valueHeld(piece, quantity);
  if (value !== null) changes.firstValuedRow ??= row;
  if (isProblem(value)) changes.doubts.push({ row, from, until, ofPieces: false, problem: value });
  const amount = typeof value === "number" ? value : 0;
  const unvalued = value === null ? quantity : 0;
  addChange(changes, from, quantity, amount, unvalued);
  if (until < Infinity) addChange(changes, until, -quantity, -amount, -unvalued);
}

function addChange({ byDay }: ValueChanges, day: number, pieces: number, value: number, unvalued: number): void {
  const change = byDay.get(day);
  if (change === undefined) byDay.set(day, { pieces, value, unvalued });
  else {
    change.pieces += pieces;
    change.value += value;
    change.unvalued += unvalued;
  }
}
