// DUE, SENDBY, DAYSOUT, DAYSLATE and LOANSTATE worked out a second time, one day after the other, from what their documentation promises.
import fc from "fast-check";
import { standInHost } from "../standInHost";
import { drawnFrom, type Drawn } from "./drawn";
import { resultOf } from "./resultOf";
import { typedDay } from "./typedDay";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost()));
afterAll(() => takeAway());

function forCases(holds: (draw: Drawn) => void): void {
  fc.assert(
    fc.property(fc.gen(), (value) => holds(drawnFrom(value))),
    { numRuns: 600 },
  );
}

/** Closed weekdays, Monday being 0, as each code or pattern stands for them (OpenFormula 1.3, 6.10.14). */
const WEEKENDS: readonly (readonly [code: unknown, closed: string])[] = [
  [null, "56"],
  ["", "56"],
  [1, "56"],
  [2, "60"],
  [3, "01"],
  [4, "12"],
  [5, "23"],
  [6, "34"],
  [7, "45"],
  [11, "6"],
  [12, "0"],
  [13, "1"],
  [14, "2"],
  [15, "3"],
  [16, "4"],
  [17, "5"],
  ["0000011", "56"],
  ["0000000", ""],
  ["1111110", "012345"],
  ["0100010", "15"],
];
// 2026-03-02 was a Monday.
const A_MONDAY = 46_083;

interface Calendar {
  readonly closed: unknown;
  readonly weekend: unknown;
  readonly isOpen: (day: number) => boolean;
}

function calendarFrom(draw: Drawn, near: number): Calendar {
  const [weekend, weekdays] = draw.one(WEEKENDS);
  const days = Array.from({ length: draw.whole(0, 6) }, () => near + draw.whole(-15, 40));
  const cells = days.map((day) => [typedDay(draw, day)]);
  if (draw.often(30)) cells.push([draw.one([null, "", 0])]);
  if (draw.often(20) && cells.length > 0) cells.unshift(["Closed"]);
  const isOpen = (day: number): boolean =>
    !weekdays.includes(String((((day - A_MONDAY) % 7) + 7) % 7)) && !days.includes(day);
  return { closed: cells.length === 0 ? draw.one([null, 0, [[0]]]) : cells, weekend, isOpen };
}

function workingDaysFrom(day: number, count: number, isOpen: Calendar["isOpen"]): number {
  let reached = day;
  for (let left = Math.abs(count); left > 0;) {
    reached += Math.sign(count);
    if (isOpen(reached)) left--;
  }
  return reached;
}

function openDaysIn(after: number, until: number, isOpen: Calendar["isOpen"]): number {
  let count = 0;
  for (let day = after + 1; day <= until; day++) if (isOpen(day)) count++;
  return count;
}

function monthsFrom(day: number, months: number): number {
  const date = new Date((day - 25569) * 86_400_000);
  const last = new Date(Date.UTC(date.getUTCFullYear(), date.getUTCMonth() + months + 1, 0));
  last.setUTCDate(Math.min(last.getUTCDate(), date.getUTCDate()));
  return last.getTime() / 86_400_000 + 25569;
}

test("DUE: what the terms count from, in which days, and to which side a closed day moves", () => {
  forCases((draw) => {
    const out = A_MONDAY + draw.whole(-400, 800);
    const { closed, weekend, isOpen } = calendarFrom(draw, out);
    const isAfterShoot = draw.often(40);
    const shoot = out + draw.whole(0, 10);
    const anchor = isAfterShoot ? shoot : out;
    const from = isAfterShoot ? draw.one([" after shoot", " after the shoot", " after wrap"]) : "";
    const count = draw.whole(1, 30);
    const [terms, day, rollsFrom] = draw.one<readonly [unknown, number, number | null]>([
      [`${count} days${from}`, anchor + count, anchor],
      [`${count} weeks${from}`, anchor + 7 * count, anchor],
      [`${count} months${from}`, monthsFrom(anchor, count), anchor],
      [`${count} working days${from}`, workingDaysFrom(anchor, count, isOpen), null],
      [`next working day${from}`, workingDaysFrom(anchor, 1, isOpen), null],
      [count, out + count, out],
      ["same day", out, null],
      [`${count} days from receipt`, out + count, null],
      ["by 2026-03-08", A_MONDAY + 6, null],
    ]);
    const roll = draw.one([null, "", "back", "on", "none"]);
    let due = day;
    if (rollsFrom !== null && roll !== "none" && !isOpen(day)) {
      const step = roll === "on" ? 1 : -1;
      while (due !== rollsFrom && !isOpen(due)) due += step;
      if (due === rollsFrom) for (due = day; !isOpen(due);) due++;
    }
    expect(resultOf("DUE", typedDay(draw, out), terms, typedDay(draw, shoot), closed, weekend, roll)).toBe(due);
  });
});

test("SENDBY: from the last working day not after the due day, transit and prep back in working days", () => {
  forCases((draw) => {
    const due = A_MONDAY + draw.whole(-400, 800);
    const { closed, weekend, isOpen } = calendarFrom(draw, due);
    const [transit, prep] = [draw.whole(0, 7), draw.one([null, "", 0, 1, 2])];
    let last = due;
    while (!isOpen(last)) last--;
    const sent = workingDaysFrom(last, -(transit + Number(prep ?? 0)), isOpen);
    expect(resultOf("SENDBY", typedDay(draw, due), transit, prep, closed, weekend)).toBe(sent);
  });
});

test("DAYSOUT and DAYSLATE: days after the first, up to and with the day back or the day looked at", () => {
  forCases((draw) => {
    const first = A_MONDAY + draw.whole(-400, 800);
    const { closed, weekend, isOpen } = calendarFrom(draw, first);
    const asOf = first + draw.whole(0, 30);
    const back = draw.often(50) ? first + draw.whole(0, 30) : null;
    const until = back !== null && back <= asOf ? back : asOf;
    const counting = draw.one([null, "calendar", "working"]);
    const days = counting === "working" ? openDaysIn(first, until, isOpen) : until - first;
    const typedBack = back === null ? draw.one([null, "", 0]) : typedDay(draw, back);
    expect(resultOf("DAYSOUT", typedDay(draw, first), typedBack, asOf, counting, closed, weekend)).toBe(days);
    const grace = draw.one([null, 0, 1, 3]);
    expect(resultOf("DAYSLATE", typedDay(draw, first), typedBack, asOf, grace, counting, closed, weekend)).toBe(
      Math.max(0, days - (grace ?? 0)),
    );
  });
});

test("LOANSTATE: one word for where a piece stands on a day", () => {
  forCases((draw) => {
    const out = A_MONDAY + draw.whole(-400, 800);
    const due = draw.often(80) ? out + draw.whole(0, 20) : null;
    const back = draw.often(40) ? out + draw.whole(0, 30) : null;
    const asOf = out + draw.whole(-3, 30);
    const warn = draw.one([null, 0, 1, 7]);
    const left = due === null ? Infinity : due - asOf;
    let state = left < 0 ? "late" : left === 0 ? "due today" : left <= (warn ?? 3) ? "due soon" : "out";
    if (back !== null && back <= asOf) state = due !== null && back > due ? "back late" : "back";
    if (out > asOf) state = "not out";
    const typed = (day: number | null): unknown => (day === null ? draw.one([null, "", 0]) : typedDay(draw, day));
    expect(resultOf("LOANSTATE", typed(out), typed(due), typed(back), asOf, warn)).toBe(state);
  });
});
