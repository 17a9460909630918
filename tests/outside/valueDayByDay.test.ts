import fc from "fast-check";
import { covergap } from "../../src/functions/bindings/covergap";
import { peakvalue } from "../../src/functions/bindings/peakvalue";
import { valuebyday } from "../../src/functions/bindings/valuebyday";
import { valueout } from "../../src/functions/bindings/valueout";

/**
 * The value curve, which is worked out by a sweep over events, against the plainest count there is: for every day, every row and
 * every single piece the question whether it is there on that day. It shares no code with the functions, and reads the raw rows.
 *
 * Held from Out on; gone on Back, or on the day after where the back day counts. Of a row that is back, Quantity less Quantity back
 * stay, and all are back where that is blank. Settled rows are never held. A blank or 0 value is no value.
 */
interface Row {
  readonly name: string;
  readonly quantity: number | "";
  /** In cents, so that no sum of the count can drift. */
  readonly cents: number | "";
  readonly out: number | "";
  readonly back: number | "";
  readonly quantityBack: number | "";
  readonly settled: "" | "lost" | "no";
}

const HEADINGS = ["Piece", "Quantity", "Value", "Out", "Back", "Quantity back", "Settled"];
const FIRST = 46_080;
const LAST = 46_095;
const DAYS = Array.from({ length: LAST - FIRST + 1 }, (_, place) => FIRST + place);

const someRow: fc.Arbitrary<Omit<Row, "name">> = fc.record({
  quantity: fc.constantFrom("" as const, 1, 2, 5),
  cents: fc.oneof(fc.constant("" as const), fc.integer({ min: 1, max: 90_000 })),
  out: fc.oneof(
    { weight: 1, arbitrary: fc.constant("" as const) },
    { weight: 6, arbitrary: fc.integer({ min: FIRST + 1, max: LAST - 4 }) },
  ),
  back: fc.oneof(fc.constant("" as const), fc.integer({ min: FIRST + 1, max: LAST - 2 })),
  quantityBack: fc.constantFrom("" as const, 0, 1, 2, 7),
  settled: fc.constantFrom("" as const, "" as const, "no" as const, "lost" as const),
});
const someRows = fc
  .array(someRow, { maxLength: 12 })
  .map((rows) => rows.map((row, place): Row => ({ ...row, name: `P${place + 1}` })));

const tableOf = (rows: readonly Row[]): unknown[][] => [
  HEADINGS,
  ...rows.map(({ name, quantity, cents, out, back, quantityBack, settled }) => [
    name,
    quantity,
    cents === "" ? "" : cents / 100,
    out,
    back,
    quantityBack,
    settled,
  ]),
];

/** Whether the piece of a row with this place in it, from 0, is there on a day. */
function isThere(row: Row, place: number, day: number, countBackDay: boolean): boolean {
  if (row.settled === "lost" || row.out === "" || day < row.out) return false;
  const isGone = row.back !== "" && (countBackDay ? day > row.back : day >= row.back);
  if (!isGone) return true;
  const allCameBack = row.quantityBack === "" || row.quantityBack === 0;
  return !allCameBack && place >= (row.quantityBack as number);
}

function countOn(rows: readonly Row[], day: number, countBackDay: boolean) {
  let [pieces, cents, unvalued] = [0, 0, 0];
  for (const row of rows)
    for (let place = 0; place < (row.quantity || 1); place++) {
      if (!isThere(row, place, day, countBackDay)) continue;
      pieces++;
      if (row.cents === "") unvalued++;
      else cents += row.cents;
    }
  return { pieces, cents, unvalued };
}

const inCents = (value: unknown): number => Math.round((value as number) * 100);

test.each([[false], [true]])("VALUEOUT and VALUEBYDAY on each day, back day counted: %s", (countBackDay) => {
  fc.assert(
    fc.property(someRows, (rows) => {
      const table = tableOf(rows);
      const [, ...found] = valuebyday(table, FIRST, LAST, "", countBackDay) as unknown[][];
      const expected = DAYS.map((day) => ({ day, ...countOn(rows, day, countBackDay) }));
      expect(found.map(([day, pieces, value, unvalued]) => ({ day, pieces, cents: inCents(value), unvalued }))).toEqual(
        expected,
      );
      for (const { day, cents } of expected) expect(inCents(valueout(table, day, "", countBackDay))).toBe(cents);
    }),
    { numRuns: 200 },
  );
});

test.each([[false], [true]])("PEAKVALUE is the first of the highest days, back day counted: %s", (countBackDay) => {
  fc.assert(
    fc.property(someRows, (rows) => {
      const days = DAYS.map((day) => ({ day, ...countOn(rows, day, countBackDay) }));
      const highest = Math.max(...days.map(({ cents }) => cents));
      const [, ...found] = peakvalue(tableOf(rows), "", countBackDay) as unknown[][];
      const peak = days.find(({ cents }) => cents === highest)!;
      if (highest === 0) expect(found.every(([, , value]) => value === 0 || value === "")).toBe(true);
      else expect(found.map(([day, , value]) => [day, inCents(value)])).toEqual([[peak.day, highest]]);
    }),
    { numRuns: 200 },
  );
});

test("COVERGAP gives each unbroken span over the cover, and each piece over its own, from the first day to the last", () => {
  const limits = fc.record({
    limitCents: fc.integer({ min: 1, max: 200_000 }),
    pieceLimitCents: fc.integer({ min: 1, max: 90_000 }),
  });
  fc.assert(
    fc.property(someRows, limits, (rows, { limitCents, pieceLimitCents }) => {
      const expected: unknown[][] = [];
      let span: { from: number; highest: number } | null = null;
      const close = (until: number | ""): void => {
        if (span === null) return;
        expected.push(["All pieces", span.from, until, span.highest, span.highest - limitCents]);
        span = null;
      };
      for (const day of DAYS) {
        const { cents } = countOn(rows, day, true);
        if (cents <= limitCents) close(day - 1);
        else {
          const open: { from: number; highest: number } = span ?? { from: day, highest: 0 };
          span = { from: open.from, highest: Math.max(open.highest, cents) };
        }
      }
      // What is still over on the last of the days, after which nothing changes, stays so.
      close("");
      for (const row of rows) {
        if (row.cents === "" || row.cents <= pieceLimitCents) continue;
        const there = DAYS.filter((day) =>
          Array.from({ length: row.quantity || 1 }).some((_, place) => isThere(row, place, day, true)),
        );
        if (there.length === 0) continue;
        const until = there.at(-1) === LAST ? "" : there.at(-1)!;
        expected.push([row.name, row.out, until, row.cents, row.cents - pieceLimitCents]);
      }
      const [, ...found] = covergap(tableOf(rows), limitCents / 100, pieceLimitCents / 100) as unknown[][];
      expect(
        found.map(([what, from, until, value, over]) => [what, from, until, inCents(value), inCents(over)]),
      ).toEqual(expected);
    }),
    { numRuns: 400 },
  );
});
