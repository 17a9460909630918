import type { FieldValue } from "../fieldValue";
import type { ChangeRange } from "./changeRange";

/** Low, likely and high minutes as one range; null where the change is fixed. `by` is the look as sentences name it; what is missing is the likely figure. */
export function changeRangeOf(
  low: number | null,
  likely: number,
  high: number | null,
  by: string,
): FieldValue<ChangeRange> {
  const range = { low: low ?? likely, likely, high: high ?? likely };
  if (range.low > likely || likely > range.high) {
    const given = `${range.low}, ${likely}, ${range.high}`;
    const expected = "minutes that rise, or stay, from Low to Likely to High";
    return { reason: "argument-not-usable", facts: { argument: `Low, Likely, High of ${by}`, given, expected } };
  }
  return range.low === range.high ? null : range;
}
