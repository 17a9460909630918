import fc from "fast-check";
import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import type { Problem } from "../../../src/domain/problem";
import type { ResultCell } from "../../../src/domain/resultTable";
import { coverGap } from "../../../src/domain/value/coverGap";
import { sayProblem } from "../../../src/domain/wording";
import { anyPieceRows } from "../loans/anyPieceRows";
import { pieceRowsOf } from "../loans/pieceRowsOf";
import { singlePiecesHeld } from "../loans/singlePiecesHeld";

const unread = (argument: string): Problem => ({ reason: "error-in-cell", facts: { argument, given: "#N/A" } });
const of = (amount: number, currency: string | null = null) => ({ amount, currency });

function gapsOf(rows: readonly Partial<PieceRow>[], limit: number, pieceLimit: number | null = null) {
  const outcome = coverGap(pieceRowsOf(rows), of(limit), pieceLimit === null ? null : of(pieceLimit));
  return outcome.ok ? outcome.value.rows : sayProblem(outcome.problem);
}

test("spans are unbroken, their value is the highest in them, and the back day counts", () => {
  const rows = [
    { out: 100, back: 110, value: 60 },
    { out: 102, back: 103, value: 50.1 },
    { out: 104, back: 104, value: 70 },
    { out: 108, back: 109, value: 41 },
  ];
  expect(gapsOf(rows, 100)).toEqual([
    ["All pieces", 102, 104, 130, 30],
    ["All pieces", 108, 109, 101, 1],
  ]);
});

test("a span of pieces that are not back has no end", () => {
  expect(gapsOf([{ out: 100, value: 101 }], 100)).toEqual([["All pieces", 100, null, 101, 1]]);
});

test("equal to the limit is not over, neither for all nor for one", () => {
  expect(gapsOf([{ out: 100, value: 100, quantity: 1 }], 100, 100)).toEqual([]);
  // In binary fractions 0.1 + 0.2 is more than 0.3.
  expect(
    gapsOf(
      [
        { out: 100, value: 0.1 },
        { out: 100, value: 0.2 },
      ],
      0.3,
    ),
  ).toEqual([]);
});

test("a single piece is measured by the value of one, under its name, for as long as any of its row is held", () => {
  const rows = [
    { piece: "P1", out: 100, back: 105, value: 60, quantity: 3 },
    { description: "Cape", out: 101, back: 103, value: 60, quantity: 2, quantityBack: 1 },
    { out: 102, totalValue: 180, quantity: 3, back: 102 },
    { piece: "P4", out: 102, totalValue: 150, quantity: 3 },
    { piece: "P5", value: 900 },
    { piece: "P6", out: 100, value: 900, settled: true },
  ];
  expect(gapsOf(rows, 1_000_000, 50)).toEqual([
    ["P1", 100, 105, 60, 10],
    ["Cape", 101, null, 60, 10],
    ["Row 4", 102, 102, 60, 10],
  ]);
});

test("a piece that cannot be read stands last, and its problem in the spans it falls into", () => {
  const value = unread("Value, row 3");
  const back = unread("Back, row 4");
  const rows = [
    { piece: "P1", out: 100, back: 109, value: 101 },
    { piece: "P2", out: 105, back: 106, value },
    { piece: "P3", out: 120, back, value: 5 },
    { piece: "P4", out: 115, back: 116, value: 200 },
  ];
  expect(gapsOf(rows, 100)).toEqual([
    ["All pieces", 100, 109, value, value],
    ["All pieces", 115, 116, 200, 100],
    ["P2", 105, 106, value, value],
    ["P3", 120, back, back, back],
  ]);
});

test("a piece above the limit of one is told though its days cannot be", () => {
  const back = unread("Back, row 2");
  expect(gapsOf([{ piece: "P1", out: 100, back, value: 60 }], 1000, 50)).toEqual([["P1", 100, back, 60, 10]]);
});

test("two currencies, and a limit in another than the pieces', are problems", () => {
  const rows = [
    { out: 100, value: 5, currency: "GBP" },
    { out: 100, value: 5, currency: "EUR" },
  ];
  expect(gapsOf(rows, 100)).toMatch(/^Row 3 is in EUR and row 2 in GBP/);
  const inOther = (limit: string | null, pieceLimit: string | null) => {
    const outcome = coverGap(pieceRowsOf(rows.slice(0, 1)), of(100, limit), of(100, pieceLimit));
    return outcome.ok ? outcome.value.rows.length : sayProblem(outcome.problem);
  };
  expect(inOther("EUR", null)).toBe(
    'limit: "100 EUR" cannot be used; give an amount in GBP, the currency of the pieces.',
  );
  expect(inOther(null, "EUR")).toMatch(/^pieceLimit: "100 EUR" cannot be used/);
  expect([inOther("GBP", "GBP"), inOther(null, null)]).toEqual([0, 0]);
  // A bare $ may be any of the dollars, and is none of the pounds.
  expect(inOther("$", null)).toMatch(/^limit: "100 \$" cannot be used; give an amount in GBP/);
  const inDollars = coverGap(pieceRowsOf([{ out: 100, value: 5, currency: "USD" }]), of(100, "$"), null);
  expect(inDollars.ok).toBe(true);
});

test("agrees with every day looked at one by one", () => {
  fc.assert(
    fc.property(anyPieceRows, fc.integer({ min: 1, max: 3_000_000 }), (rows, limitCents) => {
      const inOneCurrency = rows.map((row) => ({ ...row, currency: null }));
      const expected: ResultCell[][] = [];
      for (let day = 99; day <= 120; day++) {
        const cents = singlePiecesHeld(inOneCurrency, day, true).reduce((sum, piece) => sum + (piece.cents ?? 0), 0);
        if (cents <= limitCents) continue;
        const last = expected.at(-1);
        if (last?.[2] === day - 1) {
          last[2] = day;
          last[3] = Math.max(last[3] as number, cents / 100);
        } else expected.push(["All pieces", day, day, cents / 100]);
      }
      const found = gapsOf(inOneCurrency, limitCents / 100) as ResultCell[][];
      // Nothing changes after day 116, so a span that lasts to the end of the days looked at has no end.
      const shown = found.map(([what, from, until, value]) => [what, from, until ?? 120, value]);
      expect(shown).toEqual(expected);
      for (const row of found) expect(row[4]).toBe(Math.round((row[3] as number) * 100 - limitCents) / 100);
    }),
  );
});
