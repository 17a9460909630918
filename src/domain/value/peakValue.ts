import type { PieceRows } from "../loans/pieceRows";
import type { Outcome } from "../outcome";
import type { ResultTable } from "../resultTable";
import { succeed } from "../succeed";
import { amountFromTenThousandths } from "./amountFromTenThousandths";
import { valueCurve } from "./valueCurve";
import type { ValueStep } from "./valueStep";

/**
 * The day on which most value is held, the first of equals, with the pieces held and their value; no row where nothing is ever held.
 *
 * A cell that decides and cannot be read is a problem: the peak might be higher.
 */
export function peakValue(pieces: PieceRows, countBackDay: boolean): Outcome<ResultTable> {
  const curve = valueCurve(pieces, countBackDay);
  if (!curve.ok) return curve;
  const [doubt] = curve.value.doubts;
  if (doubt !== undefined) return { ok: false, problem: doubt.problem };
  let peak: ValueStep | null = null;
  for (const step of curve.value.steps) {
    if (step.pieces > 0 && (peak === null || step.value > peak.value)) peak = step;
  }
  return succeed({
    headings: ["Date", "Pieces", "Value"],
    formats: ["date", "as is", "money"],
    rows: peak === null ? [] : [[peak.day, peak.pieces, amountFromTenThousandths(peak.value)]],
  });
}
