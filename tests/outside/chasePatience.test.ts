import { calendarOf } from "../../src/domain/dates/calendarOf";
import { chaseDays } from "../../src/domain/loans/chaseDays";
import { serialOf } from "./serialOf";
import computed from "./workdayVectors.json";

/**
 * The patience of CHASEROWS against LibreOffice Calc's WORKDAY (workdayVectors.json): asked on its start, with its days as
 * patience, a request is chased on its result and not the day before.
 */
const vectors = computed.vectors as unknown as [
  string,
  string,
  number | string,
  number | string | null,
  string,
  number,
][];
const lists = computed.holidayLists as Readonly<Record<string, readonly string[]>>;
const forward = vectors.filter(([name, , days]) => name === "WORKDAY" && typeof days === "number" && days > 0);

test("there are vectors that count forward", () => expect(forward.length).toBeGreaterThan(10));

test.each(forward)("%s from %s, %s days, weekend %s, holidays %s: first chased on %i", (...vector) => {
  const [, start, days, , holidays, result] = vector;
  const calendar = calendarOf(0b1100000, lists[holidays]!.map(serialOf));
  const lastAskedOn = (day: number): number => {
    const found = chaseDays(day, days as number, calendar);
    return found.ok ? found.value.lastAsked : NaN;
  };
  expect(lastAskedOn(result)).toBeGreaterThanOrEqual(serialOf(start));
  expect(lastAskedOn(result - 1)).toBeLessThan(serialOf(start));
});
