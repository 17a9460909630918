import fc from "fast-check";
import { covergap } from "../../../src/functions/bindings/covergap";
import { valueout } from "../../../src/functions/bindings/valueout";
import { coverSpans } from "../../../src/pane/today/coverSpans";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import { valueToday } from "../../../src/pane/today/valueToday";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const ASOF = 46086;
const headings = ["Piece", "Lender", "Out", "Due", "Back", "Quantity", "Value"];

/** `byDay` gives days a cover of their own. */
async function spansOf(
  rows: readonly (readonly Cell[])[],
  limit: number | null,
  asOf = ASOF,
  byDay: readonly (readonly [number, number])[] = [],
) {
  const read = await readSheets([{ name: "Loans", rows: [headings, ...rows] }]);
  const [value] = valueToday(pieceTables(read.tables), asOf);
  const figure = (amount: number) => ({ amount, place: null });
  const cover = {
    everyDay: limit === null ? null : figure(limit),
    byDay: new Map(byDay.map(([day, amount]) => [day, figure(amount)])),
  };
  return coverSpans(value?.rows ?? [], cover, asOf);
}

test("days over the cover stand as unbroken spans with their highest value, the day something comes back counted", async () => {
  const rows = [
    ["a", "Ado", ASOF - 3, ASOF, ASOF, 1, 400],
    ["b", "Ado", ASOF - 1, ASOF, ASOF + 4, 1, 900],
  ];
  expect(await spansOf(rows, 1000)).toEqual([{ from: ASOF - 1, until: ASOF, value: 1300, overBy: 300 }]);
  expect(await spansOf(rows, 1300)).toEqual([]);
  expect(await spansOf(rows, 1000, ASOF + 1)).toEqual([]);
});

test("a span that lasts while nothing is back has no end", async () => {
  expect(await spansOf([["a", "Ado", ASOF - 3, ASOF, null, 1, 400]], 100)).toMatchObject([{ until: null }]);
});

test("the spans that are not over yet are those of COVERGAP", async () => {
  const day = fc.integer({ min: ASOF - 8, max: ASOF + 8 });
  const row = fc.tuple(
    fc.constant("a"),
    fc.constant("Ado"),
    day,
    fc.constant(ASOF),
    fc.option(day),
    fc.constantFrom(1, 2, null),
    fc.constantFrom(100, 99.95, null),
  );
  const plain = (cell: unknown) =>
    typeof cell === "object" && cell !== null ? (cell as { basicValue: unknown }).basicValue : cell;
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 10 }), async (rows) => {
      const spans = await spansOf(rows, 150);
      const given = covergap([headings, ...rows], 150)
        .slice(1)
        .map((cells) => cells.slice(1).map(plain))
        .filter(([, until]) => until === "" || Number(until) >= ASOF);
      expect(spans.map(({ from, until, value, overBy }) => [from, until ?? "", value, overBy])).toEqual(given);
    }),
  );
});

test("a day with a cover of its own is held against that, and days without any against none", async () => {
  const rows = [["a", "Ado", ASOF, ASOF, null, 1, 400]];
  expect(await spansOf(rows, null, ASOF, [[ASOF + 2, 300]])).toEqual([
    { from: ASOF + 2, until: ASOF + 2, value: 400, overBy: 100 },
  ]);
  expect(await spansOf(rows, 300, ASOF, [[ASOF + 2, 400]])).toEqual([
    { from: ASOF, until: ASOF + 1, value: 400, overBy: 100 },
    { from: ASOF + 3, until: null, value: 400, overBy: 100 },
  ]);
});

test("with covers by day the spans are the days, gone through one by one, on which VALUEOUT passes the cover of the day", async () => {
  const near = fc.integer({ min: 0, max: 9 }).map((days) => ASOF + days);
  const row = fc.tuple(
    fc.constant("a"),
    fc.constant("Ado"),
    near,
    fc.constant(ASOF),
    near,
    fc.constantFrom(1, 2),
    fc.constantFrom(100, 99.95, 50),
  );
  const covers = fc.array(fc.tuple(near, fc.constantFrom(60, 100, 150, 1000)), { maxLength: 5 });
  await fc.assert(
    fc.asyncProperty(
      fc.array(row, { minLength: 1, maxLength: 8 }),
      covers,
      fc.option(fc.constantFrom(80, 120)),
      async (rows, byDay, everyDay) => {
        const ofDay = new Map(byDay);
        const wanted = Array.from({ length: 14 }, (_, index) => ASOF + index).filter(
          (day) => Number(valueout([headings, ...rows], day, null, true)) > (ofDay.get(day) ?? everyDay ?? Infinity),
        );
        const spans = await spansOf(rows, everyDay, ASOF, byDay);
        const given = spans.flatMap(({ from, until }) =>
          Array.from({ length: (until ?? ASOF + 13) - from + 1 }, (_, index) => from + index),
        );
        expect(given).toEqual(wanted);
      },
    ),
  );
});
