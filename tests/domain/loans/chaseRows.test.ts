import fc from "fast-check";
import { calendarOf } from "../../../src/domain/dates/calendarOf";
import { isOpenDay } from "../../../src/domain/dates/isOpenDay";
import { chaseDays } from "../../../src/domain/loans/chaseDays";
import { chaseRows } from "../../../src/domain/loans/chaseRows";
import type { RequestRow } from "../../../src/domain/loans/requestRow";
import type { Problem } from "../../../src/domain/problem";
import { sayProblem } from "../../../src/domain/wording";
import { serialOf } from "../../outside/serialOf";
import { requestRowOf } from "./requestRowOf";

const WEEKEND = 0b1100000;
const unread: Problem = { reason: "date-not-understood", facts: { argument: "Asked, row 2", given: "soon" } };

/** Thursday. */
const asOf = serialOf("2026-03-05");
const [tuesday, wednesday] = [asOf - 2, asOf - 1];

function found(
  requests: readonly Partial<RequestRow>[],
  patience = 2,
  day = asOf,
  calendar = calendarOf(WEEKEND),
): unknown {
  const rows = requests.map((fields, place) => requestRowOf({ row: place + 1, ...fields }));
  const days = chaseDays(day, patience, calendar);
  if (!days.ok) return sayProblem(days.problem);
  const chased = chaseRows({ count: rows.length, at: (index) => rows[index]! }, days.value);
  return chased.map(({ row, unread: cells }) => (cells === undefined ? row : [row, cells]));
}

test("an unanswered request is chased once it was asked as many working days ago as the patience lasts", () => {
  const asked = [tuesday - 1, tuesday, wednesday, asOf, asOf + 1];
  const rows = asked.map((day) => ({ asked: day }));
  expect(found(rows)).toEqual([1, 2]);
  expect(found(rows, 0)).toEqual([1, 2, 3, 4]);
  expect(found(rows, 1)).toEqual([1, 2, 3]);
});

test("days off do not count: asked on Friday, it is chased on Tuesday and on Wednesday after a holiday", () => {
  const friday = serialOf("2026-04-03");
  const [monday, nextTuesday, nextWednesday] = [friday + 3, friday + 4, friday + 5];
  const chasedOn = (closed: number[]) =>
    [monday, nextTuesday, nextWednesday].filter(
      (day) => (found([{ asked: friday }], 2, day, calendarOf(WEEKEND, closed)) as unknown[]).length > 0,
    );
  expect(chasedOn([])).toEqual([nextTuesday, nextWednesday]);
  expect(chasedOn([monday])).toEqual([nextWednesday]);
});

test("waiting is unanswered even beside a day answered; a day answered alone is an answer", () => {
  expect(
    found([
      { asked: tuesday, answer: "waiting", answered: wednesday },
      { asked: tuesday, answered: wednesday },
    ]),
  ).toEqual([1]);
});

test("an answered request that is not collected is chased while the need is near or past", () => {
  // Two working days after Thursday are Friday and Monday; on Saturday one is left.
  const needs = [asOf - 30, asOf, asOf + 1, asOf + 2, asOf + 4, asOf + 5, null];
  expect(found(needs.map((neededBy) => ({ asked: asOf, answer: "given" as const, neededBy })))).toEqual([
    1, 2, 3, 4, 5,
  ]);
});

test("a no and what is collected are left out, and so is what was never asked", () => {
  expect(
    found([
      { asked: tuesday, answer: "no", neededBy: asOf },
      { asked: tuesday, collected: true },
      { asked: tuesday, answer: "given", neededBy: asOf, collected: true },
      { neededBy: asOf },
    ]),
  ).toEqual([]);
});

test("the soonest need comes first, past before all, none last, and equals keep sheet order", () => {
  const needs = [asOf + 9, null, asOf - 3, asOf + 1, asOf + 9, null];
  expect(found(needs.map((neededBy) => ({ asked: tuesday, neededBy })))).toEqual([3, 4, 1, 5, 2, 6]);
});

test("a request of which it cannot be told stands last, with the cells that cannot be read", () => {
  expect(
    found([
      { asked: unread },
      { asked: tuesday },
      { asked: tuesday, neededBy: unread },
      { asked: unread, answer: "no" },
      { asked: unread, answer: "given", neededBy: asOf + 50 },
      { answer: unread, asked: unread },
      { asked: tuesday, collected: unread },
      { asked: tuesday, answered: unread },
    ]),
  ).toEqual([
    2,
    [1, { asked: unread }],
    [3, { neededBy: unread }],
    [6, { answer: unread, asked: unread }],
    [7, { collected: unread }],
    [8, { answered: unread }],
  ]);
});

test("a week without a working day is refused", () => {
  expect(found([], 2, asOf, calendarOf(0b1111111))).toMatch(/^weekend: "1111111" cannot be used/);
});

test("agrees with counting the working days one by one", () => {
  const day = fc.integer({ min: asOf - 14, max: asOf + 14 });
  const request = fc.record({
    asked: fc.option(day, { freq: 4 }),
    neededBy: fc.option(day, { freq: 4 }),
    answer: fc.constantFrom(null, "no" as const, "waiting" as const, "given" as const),
    answered: fc.option(day, { freq: 1 }),
    collected: fc.constantFrom(null, null, false, true),
  });
  const calendars = fc
    .tuple(fc.integer({ min: 0, max: 0b1111110 }), fc.array(day, { maxLength: 5 }))
    .map(([weekdays, closed]) => calendarOf(weekdays, closed));
  fc.assert(
    fc.property(
      fc.array(request, { maxLength: 12 }),
      fc.integer({ min: 0, max: 6 }),
      calendars,
      (requests, patience, calendar) => {
        const workdaysAfter = (from: number, until: number): number => {
          let count = 0;
          for (let each = from + 1; each <= until; each++) if (isOpenDay(each, calendar)) count++;
          return count;
        };
        const expected = requests
          .map((fields, place) => ({ ...fields, row: place + 1 }))
          .filter(({ asked, neededBy, answer, answered, collected }) => {
            if (answer === "no" || collected === true) return false;
            const isAnswered = answer === "given" || (answer === null && answered !== null);
            if (!isAnswered) return asked !== null && asked <= asOf && workdaysAfter(asked, asOf) >= patience;
            return neededBy !== null && workdaysAfter(asOf, neededBy) <= patience;
          })
          .sort((a, b) => {
            if (a.neededBy === null || b.neededBy === null)
              return a.neededBy === b.neededBy ? a.row - b.row : a.neededBy === null ? 1 : -1;
            return a.neededBy - b.neededBy || a.row - b.row;
          })
          .map(({ row }) => row);
        expect(found(requests, patience, asOf, calendar)).toEqual(expected);
      },
    ),
  );
});
