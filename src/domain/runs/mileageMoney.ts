import { schemes } from "../../../shared/mileage-rates.json";
import { isoFromSerial } from "../dates/isoFromSerial";
import { fail } from "../fail";
import type { Outcome } from "../outcome";
import { succeed } from "../succeed";
import type { MileageScheme } from "./mileageScheme";

/** From which day, the rate a mile, and where there is a first band its miles in a tax year and the rate after them. */
type Rate = readonly [from: string, rate: number, bandMiles?: number, rateAfter?: number];

/**
 * The mileage money for some miles on a day (serial), by the rate published for that day, to the ten thousandth.
 *
 * `milesSoFar` are those of the same tax year before, which count towards the first band. A day before or after those for which rates
 * are published is argument-not-usable. Rates and sources: shared/mileage-rates.json.
 */
export function mileageMoney(day: number, miles: number, scheme: MileageScheme, milesSoFar: number): Outcome<number> {
  const { until, rates } = schemes[scheme] as unknown as { until: string; rates: readonly Rate[] };
  const iso = isoFromSerial(day);
  const rate = rates.filter(([from]) => from <= iso).at(-1);
  if (rate === undefined || iso > until) {
    const expected = `a day from ${rates[0]![0]} to ${until}, for which the ${scheme} rate is published`;
    return fail("argument-not-usable", { argument: "date", given: iso, expected });
  }
  const [, first, bandMiles = Infinity, after = first] = rate;
  const inBand = Math.min(miles, Math.max(0, bandMiles - milesSoFar));
  return succeed(Math.round((inBand * first + (miles - inBand) * after) * 10_000) / 10_000);
}
