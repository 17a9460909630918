import fc from "fast-check";
import { sayProblem } from "../../../src/domain/wording";
import { valueOut } from "../../../src/domain/value/valueOut";
import type { Problem } from "../../../src/domain/problem";
import { anyPieceRows } from "../loans/anyPieceRows";
import { singlePiecesHeld } from "../loans/singlePiecesHeld";
import { pieceRowsOf } from "../loans/pieceRowsOf";

const unread: Problem = { reason: "error-in-cell", facts: { argument: "Value, row 2", given: "#N/A" } };

test("is 0 where nothing is held", () => {
  expect(valueOut(pieceRowsOf([]), 100, false)).toEqual({ ok: true, value: 0 });
  expect(valueOut(pieceRowsOf([{ out: 101, value: 5 }]), 100, false)).toEqual({ ok: true, value: 0 });
});

test("adds what is held, exact to the cent", () => {
  // By hand: 0.10 + 0.20 + 3 x 0.70 = 2.40, where binary fractions would give 2.4000000000000004 or less.
  const rows = [
    { out: 90, value: 0.1 },
    { out: 90, value: 0.2 },
    { out: 90, value: 0.7, quantity: 3 },
  ];
  expect(valueOut(pieceRowsOf(rows), 100, false)).toEqual({ ok: true, value: 2.4 });
});

test("counts the back day only when asked to", () => {
  const rows = [{ out: 90, back: 100, value: 5 }];
  expect(valueOut(pieceRowsOf(rows), 100, false)).toEqual({ ok: true, value: 0 });
  expect(valueOut(pieceRowsOf(rows), 100, true)).toEqual({ ok: true, value: 5 });
});

test("two currencies are a problem that names both rows", () => {
  const rows = [
    { out: 90, value: 5, currency: "GBP" },
    { out: 90, value: 5, currency: "EUR" },
  ];
  const outcome = valueOut(pieceRowsOf(rows), 100, false);
  if (outcome.ok) throw new Error("expected a problem");
  expect(outcome.problem).toEqual({
    reason: "currencies-mixed",
    facts: { rowNumber: 3, currency: "EUR", firstRowNumber: 2, firstCurrency: "GBP" },
  });
  expect(sayProblem(outcome.problem)).toMatch(/^Row 3 is in EUR and row 2 in GBP, so they cannot be added; /);
});

test("an amount without a currency is not added to one in pounds", () => {
  const rows = [
    { out: 90, value: 5, currency: "GBP" },
    { out: 90, value: 5 },
  ];
  const outcome = valueOut(pieceRowsOf(rows), 100, false);
  expect(outcome.ok ? "" : sayProblem(outcome.problem)).toMatch(/^Row 3 is without a currency and row 2 in GBP/);
});

test("a second currency matters only on a piece that is held and has a value", () => {
  const rows = [
    { out: 90, value: 5, currency: "GBP" },
    { out: 90, currency: "EUR" },
    { out: 90, back: 95, value: 5, currency: "EUR" },
  ];
  expect(valueOut(pieceRowsOf(rows), 100, false)).toEqual({ ok: true, value: 5 });
});

test("a value that cannot be read is a problem where the piece is held, and only there", () => {
  expect(valueOut(pieceRowsOf([{ out: 90, value: unread }]), 100, false)).toEqual({ ok: false, problem: unread });
  expect(valueOut(pieceRowsOf([{ out: 90, back: 95, value: unread }]), 100, false)).toEqual({ ok: true, value: 0 });
});

test("a day or currency that cannot be read is a problem", () => {
  expect(valueOut(pieceRowsOf([{ out: 90, back: unread }]), 100, false)).toEqual({ ok: false, problem: unread });
  expect(valueOut(pieceRowsOf([{ out: 90, value: 5, currency: unread }]), 100, false)).toEqual({
    ok: false,
    problem: unread,
  });
});

test("agrees with single pieces followed day by day, counting the back day or not", () => {
  fc.assert(
    fc.property(anyPieceRows, fc.integer({ min: 99, max: 116 }), fc.boolean(), (rows, day, countBackDay) => {
      const inOneCurrency = rows.map((row) => ({ ...row, currency: null }));
      const cents = singlePiecesHeld(inOneCurrency, day, countBackDay).reduce(
        (sum, piece) => sum + (piece.cents ?? 0),
        0,
      );
      expect(valueOut(pieceRowsOf(inOneCurrency), day, countBackDay)).toEqual({ ok: true, value: cents / 100 });
    }),
  );
});
