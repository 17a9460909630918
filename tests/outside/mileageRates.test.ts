import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { mileageMoney } from "../../src/domain/runs/mileageMoney";
import type { MileageScheme } from "../../src/domain/runs/mileageScheme";
import restated from "./mileageRates.json";
import { serialOf } from "./serialOf";

// Every published rate, on its first day and on the day before the next.

function money(day: number, miles: number, scheme: MileageScheme, soFar = 0): number | string {
  const outcome = mileageMoney(day, miles, scheme, soFar);
  return outcome.ok ? outcome.value : outcome.problem.reason;
}

/** Each row with its last day: the one before the next row's first. */
function withLastDay<T extends { readonly from: string }>(rows: readonly T[], until: string) {
  return rows.map((row, index) => {
    const next = rows[index + 1];
    return { ...row, first: serialOf(row.from), last: next === undefined ? serialOf(until) : serialOf(next.from) - 1 };
  });
}

test.each(withLastDay(restated.us_irs_business, "2026-12-31"))("US from $from: $usd_per_mile a mile", (row) => {
  for (const day of [row.first, row.last]) expect(money(day, 1000, "US", 20_000)).toBe(row.usd_per_mile * 1000);
});

test.each(withLastDay(restated.uk_hmrc_car_van, "2027-04-05"))(
  "UK from $from: $first_10000_gbp a mile for 10,000 miles of the tax year, then $after_gbp",
  (row) => {
    for (const day of [row.first, row.last]) {
      expect(money(day, 10_000, "UK")).toBeCloseTo(10_000 * row.first_10000_gbp, 6);
      expect(money(day, 10_100, "UK")).toBeCloseTo(10_000 * row.first_10000_gbp + 100 * row.after_gbp, 6);
      expect(money(day, 100, "UK", 9_950)).toBeCloseTo(50 * row.first_10000_gbp + 50 * row.after_gbp, 6);
      expect(money(day, 100, "UK", 10_000)).toBeCloseTo(100 * row.after_gbp, 6);
    }
  },
);

test("motorcycles and bicycles have one rate", () => {
  const day = serialOf("2026-05-01");
  expect(money(day, 20_000, "UK motorcycle")).toBe(20_000 * restated.uk_other.motorcycle);
  expect(money(day, 20_000, "UK bicycle")).toBe(20_000 * restated.uk_other.bicycle);
});

test("a day outside the published table is refused", () => {
  for (const [day, scheme] of [
    ["2017-12-31", "US"],
    ["2027-01-01", "US"],
    ["2011-04-05", "UK"],
    ["2027-04-06", "UK"],
  ] as const)
    expect(money(serialOf(day), 10, scheme)).toBe("argument-not-usable");
});

const reference = join(__dirname, "../../../shared/reference/mileage_rates.json");
(existsSync(reference) ? test : test.skip)(
  "the restated table is the collected one (skipped where the reference folder is absent)",
  () => {
    const collected = JSON.parse(readFileSync(reference, "utf8")) as Record<string, unknown>;
    const { source, ...tables } = restated;
    expect(source).not.toBe("");
    expect(collected).toMatchObject(tables);
    for (const table of ["us_irs_business", "uk_hmrc_car_van"] as const)
      expect(collected[table]).toHaveLength(restated[table].length);
  },
);
