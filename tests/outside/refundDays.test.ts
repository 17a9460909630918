import { DateTime } from "luxon";
import { isoFromSerial } from "../../src/domain/dates/isoFromSerial";
import { refunds } from "../../src/functions/bindings/refunds";
import { serialOf } from "./serialOf";
import computed from "./workdayVectors.json";

interface Vectors {
  readonly vectors: readonly (readonly [
    name: string,
    start: string,
    daysOrEnd: number | string,
    weekend: number | string | null,
    holidays: string,
    result: number,
  ])[];
  readonly holidayLists: Readonly<Record<string, readonly string[]>>;
}

/**
 * The last day of a refund window. That the day of the receipt is day 0 is common practice of shops, no source; it is also how
 * Regulation (EEC, Euratom) No 1182/71, Article 3(1), counts periods in days from an event (from memory).
 * The dates are luxon 3.7.2's; luxon, too, clips months at the month's end.
 */
function refundBy(bought: string, terms: string): unknown {
  const [, row] = refunds(
    [
      ["Shop", "Bought", "Amount", "Terms"],
      ["Kessel", serialOf(bought), 10, terms],
    ],
    serialOf(bought),
  );
  return isoFromSerial(row![1] as number);
}

const BOUGHT = ["2026-01-31", "2026-02-28", "2027-12-31", "2028-01-30", "2028-02-29", "2026-03-29", "2026-10-25"];

test.each([14, 28, 30, 60, 90, 365])("%i days from the receipt", (days) => {
  for (const bought of BOUGHT)
    expect(refundBy(bought, `${days} days`)).toBe(DateTime.fromISO(bought, { zone: "utc" }).plus({ days }).toISODate());
});

test.each([1, 2, 6, 12])("%i months from the receipt", (months) => {
  for (const bought of BOUGHT)
    expect(refundBy(bought, `${months} month${months > 1 ? "s" : ""} from receipt`)).toBe(
      DateTime.fromISO(bought, { zone: "utc" }).plus({ months }).toISODate(),
    );
});

test("the days left count down to 0 on the last day and on below it", () => {
  const left = (asOf: string): unknown =>
    refunds(
      [
        ["Shop", "Bought", "Amount", "Terms"],
        ["Kessel", "2026-03-02", 10, "28 days"],
      ],
      asOf,
    )[1]![2];
  expect(["2026-03-02", "2026-03-29", "2026-03-30", "2026-03-31"].map(left)).toEqual([28, 1, 0, -1]);
});

test("working days leave out Saturdays and Sundays, as LibreOffice Calc 7.4.7 counts them (workdayVectors.json)", () => {
  const { vectors, holidayLists } = computed as unknown as Vectors;
  const plain = vectors.filter(
    ([name, , days, weekend, holidays]) =>
      name.startsWith("WORKDAY") &&
      (weekend ?? 1) === 1 &&
      holidayLists[holidays]!.length === 0 &&
      (days as number) > 0,
  );
  expect(plain.length).toBeGreaterThan(20);
  for (const [, start, days, , , result] of plain)
    expect(serialOf(refundBy(start, `${days} working days`) as string)).toBe(result);
});
