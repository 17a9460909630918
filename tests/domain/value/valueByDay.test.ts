import fc from "fast-check";
import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import type { Problem } from "../../../src/domain/problem";
import type { ResultCell } from "../../../src/domain/resultTable";
import { valueByDay } from "../../../src/domain/value/valueByDay";
import { valueOut } from "../../../src/domain/value/valueOut";
import { sayProblem } from "../../../src/domain/wording";
import { anyPieceRows } from "../loans/anyPieceRows";
import { pieceRowsOf } from "../loans/pieceRowsOf";
import { singlePiecesHeld } from "../loans/singlePiecesHeld";

const unread = (argument: string): Problem => ({ reason: "error-in-cell", facts: { argument, given: "#N/A" } });

function daysOf(
  rows: readonly Partial<PieceRow>[],
  from: number,
  to: number,
  hasCurrencies = false,
  countBackDay = false,
) {
  const outcome = valueByDay(pieceRowsOf(rows, hasCurrencies), from, to, countBackDay);
  if (!outcome.ok) throw new Error(sayProblem(outcome.problem));
  return outcome.value;
}

test("is one row a day, both ends counted, also where nothing is held", () => {
  const { headings, formats, rows } = daysOf([{ out: 101, back: 103, value: 0.1, quantity: 3 }], 100, 103);
  expect(headings).toEqual(["Date", "Pieces", "Value", "Unvalued"]);
  expect(formats).toEqual(["date", "as is", "money", "as is"]);
  expect(rows).toEqual([
    [100, 0, 0, 0],
    [101, 3, 0.3, 0],
    [102, 3, 0.3, 0],
    [103, 0, 0, 0],
  ]);
});

test("counts the back day when asked to, and what came back in part", () => {
  const rows = [{ out: 100, back: 101, value: 5, quantity: 3, quantityBack: 1 }];
  expect(daysOf(rows, 100, 102).rows.map((row) => row[1])).toEqual([3, 2, 2]);
  expect(daysOf(rows, 100, 102, false, true).rows.map((row) => row[1])).toEqual([3, 3, 2]);
});

test("pieces without a value are counted in Pieces and in Unvalued", () => {
  const rows = [
    { out: 100, quantity: 2 },
    { out: 101, value: 5 },
  ];
  expect(daysOf(rows, 100, 101).rows).toEqual([
    [100, 2, 0, 2],
    [101, 3, 5, 2],
  ]);
});

test("each currency that is held in the span has a row of its own every day, in the order first seen", () => {
  const rows = [
    { out: 90, back: 95, value: 9, currency: "USD" },
    { out: 101, value: 5, currency: "GBP" },
    { out: 100, value: 7, currency: "EUR" },
    { out: 100 },
  ];
  expect(daysOf(rows, 100, 101, true).rows).toEqual([
    [100, 0, 0, 0, "GBP"],
    [100, 1, 7, 0, "EUR"],
    [100, 1, 0, 1, null],
    [101, 1, 5, 0, "GBP"],
    [101, 1, 7, 0, "EUR"],
    [101, 1, 0, 1, null],
  ]);
  expect(daysOf([], 100, 100, true).rows).toEqual([[100, 0, 0, 0, null]]);
});

test("a value that cannot be read spoils the value of the days it is held, and nothing else", () => {
  const value = unread("Value, row 2");
  const rows = [
    { out: 101, back: 102, value },
    { out: 100, value: 5 },
  ];
  expect(daysOf(rows, 100, 102).rows).toEqual([
    [100, 1, 5, 0],
    [101, 2, value, 0],
    [102, 1, 5, 0],
  ]);
});

test("a day that cannot be read spoils every figure from where it matters; the first such row is named", () => {
  const [out, back] = [unread("Out, row 3"), unread("Back, row 2")];
  const rows = [
    { out: 102, back, value: 1 },
    { out, back: 101, value: 1 },
  ];
  expect(daysOf(rows, 100, 102).rows).toEqual([
    [100, out, out, out],
    [101, 0, 0, 0],
    [102, back, back, back],
  ]);
});

test("a currency that cannot be read stands in its own row", () => {
  const currency = unread("Currency, row 2");
  expect(daysOf([{ out: 100, value: 5, currency }], 100, 100, true).rows).toEqual([[100, 1, 5, 0, currency]]);
});

test("a span that ends before it begins, or is over ten years long, is a problem", () => {
  const sentence = (from: number, to: number): string => {
    const outcome = valueByDay(pieceRowsOf([]), from, to, false);
    return outcome.ok ? "" : sayProblem(outcome.problem);
  };
  expect(sentence(46083, 46082)).toBe(
    'to: "2026-03-01" cannot be used; give a day from 2026-03-02 on, and at most ten years later.',
  );
  expect(sentence(46083, 46083 + 3653)).toContain('to: "2036-03-02"');
  expect(sentence(46083, 46083 + 3652)).toBe("");
});

test("agrees with single pieces followed day by day, currency by currency", () => {
  fc.assert(
    fc.property(
      anyPieceRows,
      fc.integer({ min: 95, max: 118 }),
      fc.nat(10),
      fc.boolean(),
      (rows, from, more, backDay) => {
        const { rows: shown } = daysOf(rows, from, from + more, true, backDay);
        for (let day = from; day <= from + more; day++) {
          const held = singlePiecesHeld(rows, day, backDay);
          const found = shown.filter((row) => row[0] === day && row[1] !== 0);
          const expected = new Map<string, [number, number, number]>();
          for (const { currency, cents } of held) {
            const sum = expected.get(currency) ?? [0, 0, 0];
            expected.set(currency, [sum[0] + 1, sum[1] + (cents ?? 0), sum[2] + (cents === null ? 1 : 0)]);
          }
          const asFound = found.map(
            ([, pieces, value, unvalued, currency]): [string, [ResultCell, number, ResultCell]] => [
              (currency as string | null) ?? "",
              [pieces!, Math.round((value as number) * 100), unvalued!],
            ],
          );
          expect(new Map(asFound)).toEqual(expected);
        }
      },
    ),
  );
});

const anyProblem = fc.constantFrom(1, 2, 3).map((row) => unread(`cell ${row}`));
const spoilt = fc
  .tuple(
    anyPieceRows,
    fc.array(
      fc.tuple(
        fc.nat(24),
        fc.constantFrom<keyof PieceRow>("out", "back", "quantity", "quantityBack", "value", "settled"),
        anyProblem,
      ),
      { maxLength: 6 },
    ),
  )
  .map(([rows, slips]) => {
    const changed: PieceRow[] = rows.map((row) => ({ ...row, currency: null }));
    for (const [place, field, problem] of slips) {
      if (changed[place] !== undefined) changed[place] = { ...changed[place], [field]: problem };
    }
    return changed;
  });

test("each day's value is that of VALUEOUT, also where a cell cannot be read", () => {
  fc.assert(
    fc.property(spoilt, fc.boolean(), (rows, backDay) => {
      for (const [day, , value] of daysOf(rows, 98, 118, false, backDay).rows) {
        const scalar = valueOut(pieceRowsOf(rows), day as number, backDay);
        if (scalar.ok) expect(value).toBe(scalar.value);
        else expect(value).toHaveProperty("reason");
      }
    }),
  );
});
