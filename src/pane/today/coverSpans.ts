import type { PieceRow } from "../../domain/loans/pieceRow";
import { amountFromTenThousandths } from "../../domain/value/amountFromTenThousandths";
import { spansOver } from "../../domain/value/spansOver";
import { tenThousandths } from "../../domain/value/tenThousandths";
import { valueCurve } from "../../domain/value/valueCurve";
import { withStepsAt } from "../../domain/value/withStepsAt";
import type { Cover } from "./Cover";
import { coverOn } from "./coverOn";
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

/**
 * The spans of days above the cover that COVERGAP gives for rows of one currency that can all be read, each day against its own cover;
 * those that ended before the day are left out.
 */
export function coverSpans(rows: readonly PieceRow[], cover: Cover, asOf: number): readonly CoverSpan[] {
  const curve = valueCurve(pieceRowsFrom(rows), true);
  if (!curve.ok) return [];
  const steps = withStepsAt(curve.value.steps, cover.byDay.keys());
  return spansOver(steps, (day) => tenThousandths(coverOn(cover, day)?.amount ?? Infinity))
    .filter(({ until }) => until === null || until >= asOf)
    .map(({ from, until, highest, overBy }) => ({
      from,
      until,
      value: amountFromTenThousandths(highest),
      overBy: amountFromTenThousandths(overBy),
    }));
}
