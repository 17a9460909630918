import { coverGap } from "../../domain/value/coverGap";
import type { PieceRow } from "../../domain/loans/pieceRow";
import { pieceRowsFrom } from "./pieceRowsFrom";

/** Days in a row on which more is held than the cover; both ends count. */
export interface CoverSpan {
  readonly from: number;
  /** null where nothing is back yet. */
  readonly until: number | null;
  /** Its highest. */
  readonly value: number;
  readonly overBy: number;
}

/** The spans of days above a limit that COVERGAP gives for rows of one currency that can all be read; those that ended before the day are left out. */
export function coverSpans(rows: readonly PieceRow[], limit: number, asOf: number): readonly CoverSpan[] {
  const gap = coverGap(pieceRowsFrom(rows), { amount: limit, currency: null }, null);
  if (!gap.ok) return [];
  return gap.value.rows.flatMap(([, from, until, value, overBy]): CoverSpan[] => {
    if (typeof from !== "number" || typeof value !== "number" || typeof overBy !== "number") return [];
    const end = typeof until === "number" ? until : null;
    return end !== null && end < asOf ? [] : [{ from, until: end, value, overBy }];
  });
}
