import { fail } from "../fail";
import { isProblem } from "../isProblem";
import type { PieceRow } from "../loans/pieceRow";
import type { PieceRows } from "../loans/pieceRows";
import { quantityHeld } from "../loans/quantityHeld";
import type { Outcome } from "../outcome";
import type { ResultCell, ResultTable } from "../resultTable";
import { succeed } from "../succeed";
import { amountFromTenThousandths } from "./amountFromTenThousandths";
import type { CoverLimit } from "./coverLimit";
import { isOtherCurrency } from "./isOtherCurrency";
import { type SpanOver, spansOver } from "./spansOver";
import { tenThousandths } from "./tenThousandths";
import { valueCurve } from "./valueCurve";
import type { ValueDoubt } from "./valueDoubt";
import { valueHeld } from "./valueHeld";

type Row = readonly [what: ResultCell, from: ResultCell, until: ResultCell, value: ResultCell, over: ResultCell];

/**
 * The spans of days on which more is held than the cover, and the single pieces that are worth more than the cover of one.
 *
 * The back day counts, as cover has to hold until a piece is handed over. A span is unbroken and as long as it can be,
 * its value is its highest; equal to the limit is not over. Spans come first, by date, then pieces in sheet order, then
 * pieces of which it cannot be told, with the problem where the value would stand; a span that such a piece
 * falls into has the problem there, too.
 */
export function coverGap(pieces: PieceRows, limit: CoverLimit, pieceLimit: CoverLimit | null): Outcome<ResultTable> {
  const curve = valueCurve(pieces, true);
  if (!curve.ok) return curve;
  const { currency, steps, doubts } = curve.value;
  for (const [argument, each] of [
    ["limit", limit],
    ["pieceLimit", pieceLimit],
  ] as const) {
    const named = each?.currency ?? null;
    if (named === null || currency === null || !isOtherCurrency(named, currency)) continue;
    const expected = `an amount in ${currency}, the currency of the pieces`;
    return fail("argument-not-usable", { argument, given: `${each!.amount} ${each!.currency}`, expected });
  }
  const rows = [
    ...spansOver(steps, () => tenThousandths(limit.amount)).map(spanRow),
    ...(pieceLimit === null && doubts.length === 0
      ? []
      : singlePieces(pieces, pieceLimit === null ? Infinity : tenThousandths(pieceLimit.amount), doubts)),
  ];
  return succeed({
    headings: ["What", "From", "Until", "Value", "Over by"],
    formats: ["as is", "date", "date", "money", "money"],
    rows,
  });
}

function spanRow({ from, until, highest, overBy, problem }: SpanOver): Row {
  if (problem !== null) return ["All pieces", from, until, problem, problem];
  return ["All pieces", from, until, amountFromTenThousandths(highest), amountFromTenThousandths(overBy)];
}

function singlePieces(pieces: PieceRows, limit: number, doubts: readonly ValueDoubt[]): readonly Row[] {
  const doubtOf = new Map(doubts.map(({ row, problem }) => [row, problem]));
  const over: Row[] = [];
  const untold: Row[] = [];
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const value = limit === Infinity ? null : valueHeld(piece, 1);
    const isOver = typeof value === "number" && value > limit;
    if (!isOver && doubtOf.size === 0) continue;
    const doubt = isOver ? undefined : doubtOf.get(piece.row);
    if (!isOver && doubt === undefined) continue;
    const span = daysHeld(piece);
    if (span === null) continue;
    const [from, until] = span;
    if (!isOver) untold.push([nameOf(piece), from, until, doubt!, doubt!]);
    else {
      const overBy = amountFromTenThousandths(value - limit);
      over.push([nameOf(piece), from, until, amountFromTenThousandths(value), overBy]);
    }
  }
  return untold.length === 0 ? over : [...over, ...untold];
}

/** From when until when any of a row is held, both counted; until is null where it stays. null where none ever is. */
function daysHeld(piece: PieceRow): [from: ResultCell, until: ResultCell] | null {
  const { out, back } = piece;
  if (out === null || piece.settled === true) return null;
  const first = typeof out === "number" ? out : 1;
  const gone = typeof back === "number" ? Math.max(first, back + 1) : null;
  const left = gone === null ? (back ?? 1) : quantityHeld(piece, gone, true);
  if (left === 0 && quantityHeld(piece, first, true) === 0) return null;
  return [out, isProblem(left) ? left : left === 0 ? gone! - 1 : null];
}

function nameOf(piece: PieceRow): ResultCell {
  return piece.piece ?? piece.description ?? `Row ${piece.row + 1}`;
}
