import fc from "fast-check";
import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import type { Problem } from "../../../src/domain/problem";
import { peakValue } from "../../../src/domain/value/peakValue";
import { sayProblem } from "../../../src/domain/wording";
import { anyPieceRows } from "../loans/anyPieceRows";
import { pieceRowsOf } from "../loans/pieceRowsOf";
import { singlePiecesHeld } from "../loans/singlePiecesHeld";

const unread: Problem = { reason: "error-in-cell", facts: { argument: "Value, row 2", given: "#N/A" } };

function peakOf(rows: readonly Partial<PieceRow>[], countBackDay = false) {
  const outcome = peakValue(pieceRowsOf(rows), countBackDay);
  return outcome.ok ? outcome.value.rows : sayProblem(outcome.problem);
}

test("is the first of the days that are highest", () => {
  const rows = [
    { out: 100, back: 102, value: 0.1 },
    { out: 101, back: 103, value: 0.2 },
    { out: 104, back: 105, value: 0.3 },
  ];
  expect(peakOf(rows)).toEqual([[101, 2, 0.3]]);
});

test("is no row where nothing is ever held, and a row of no value where nothing held has one", () => {
  expect(peakOf([{ value: 5 }, { out: 100, value: 5, settled: true }])).toEqual([]);
  expect(peakOf([{ out: 100, quantity: 2 }])).toEqual([[100, 2, 0]]);
});

test("the back day counts only when asked to", () => {
  const rows = [
    { out: 100, back: 101, value: 5 },
    { out: 101, value: 7 },
  ];
  expect(peakOf(rows)).toEqual([[101, 1, 7]]);
  expect(peakOf(rows, true)).toEqual([[101, 2, 12]]);
});

test("what cannot be read on a piece that is ever held is a problem, as the peak might be higher", () => {
  expect(
    peakOf([
      { out: 100, back: 101, value: unread },
      { out: 105, value: 5 },
    ]),
  ).toBe(sayProblem(unread));
  expect(peakOf([{ value: unread }, { out: 105, value: 5 }])).toEqual([[105, 1, 5]]);
});

test("values in two currencies are a problem that names both rows, even on different days", () => {
  const rows = [
    { out: 100, back: 101, value: 5, currency: "GBP" },
    { out: 102, value: 5, currency: "EUR" },
  ];
  expect(peakOf(rows)).toMatch(/^Row 3 is in EUR and row 2 in GBP, so they cannot be added; /);
});

test("a piece without a value is counted whatever its currency", () => {
  const rows = [
    { out: 100, value: 5, currency: "GBP" },
    { out: 100, currency: "EUR" },
  ];
  expect(peakOf(rows)).toEqual([[100, 2, 5]]);
});

test("agrees with every day looked at one by one", () => {
  fc.assert(
    fc.property(anyPieceRows, fc.boolean(), (rows, backDay) => {
      const inOneCurrency = rows.map((row) => ({ ...row, currency: null }));
      let best: [number, number, number] | null = null;
      for (let day = 100; day <= 120; day++) {
        const held = singlePiecesHeld(inOneCurrency, day, backDay);
        const cents = held.reduce((sum, piece) => sum + (piece.cents ?? 0), 0);
        if (held.length > 0 && (best === null || cents > best[2])) best = [day, held.length, cents];
      }
      const expected = best === null ? [] : [[best[0], best[1], best[2] / 100]];
      expect(peakOf(inOneCurrency, backDay)).toEqual(expected);
    }),
  );
});
