import fc from "fast-check";
import { dueRows } from "../../../src/domain/loans/dueRows";
import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import type { Problem } from "../../../src/domain/problem";
import { sayProblem } from "../../../src/domain/wording";
import { anyPieceRows } from "./anyPieceRows";
import { singlePiecesHeld } from "./singlePiecesHeld";
import { pieceRowsOf } from "./pieceRowsOf";

const unread: Problem = { reason: "date-not-understood", facts: { argument: "Due, row 2", given: "soon" } };
function found(rows: readonly Partial<PieceRow>[], from: number, to: number): unknown {
  const due = dueRows(pieceRowsOf(rows), from, to);
  return due.ok ? due.value.map(({ row, due: day, unread: cells }) => [row, day ?? cells]) : sayProblem(due.problem);
}

test("both ends of the span are counted, and the soonest come first, then in sheet order", () => {
  const rows = [99, 100, 105, 102, 106, 100].map((due) => ({ out: 90, due }));
  expect(found(rows, 100, 105)).toEqual([
    [2, 100],
    [6, 100],
    [4, 102],
    [3, 105],
  ]);
});

test("a day it was extended to stands in for the due day", () => {
  const rows = [
    { out: 90, due: 95, extendedTo: 101 },
    { out: 90, due: 101, extendedTo: 110 },
  ];
  expect(found(rows, 100, 105)).toEqual([[1, 101]]);
});

test("pieces without a due day, settled, back or not out are left out, and one back after the span is not yet back", () => {
  const rows = [
    { out: 90 },
    { out: 90, due: 101, settled: true },
    { out: 90, due: 101, back: 105 },
    { due: 101 },
    { out: 106, due: 101 },
    { out: 90, due: 101, back: 106 },
    { out: 90, due: 101, quantity: 3, back: 100, quantityBack: 2 },
  ];
  expect(found(rows, 100, 105)).toEqual([
    [6, 101],
    [7, 101],
  ]);
});

test("a row of which it cannot be told stands last, with each cell that cannot be read", () => {
  const rows = [
    { out: 90, due: unread, back: unread },
    { out: 90, due: 104 },
    { out: 90, due: 101, quantity: unread },
    { out: 90, due: 110, back: unread },
    { out: 90, due: unread, back: 95 },
  ];
  expect(found(rows, 100, 105)).toEqual([
    [2, 104],
    [1, { due: unread, back: unread }],
    [3, { quantity: unread }],
  ]);
});

test("a span of one day is a span, and one that ends before it begins is refused", () => {
  expect(found([{ out: 90, due: 100 }], 100, 100)).toEqual([[1, 100]]);
  expect(found([], 46083, 46082)).toBe('to: "2026-03-01" cannot be used; give a day on or after from, 2026-03-02.');
});

test("agrees with single pieces followed day by day", () => {
  const span = fc.tuple(fc.integer({ min: 99, max: 116 }), fc.integer({ min: 0, max: 8 }));
  fc.assert(
    fc.property(anyPieceRows, span, (rows, [from, length]) => {
      const held = singlePiecesHeld(rows, from + length, false);
      const expected: number[][] = [];
      for (let day = from; day <= from + length; day++)
        for (const { row } of rows)
          if (held.some((piece) => piece.row === row && piece.due === day)) expected.push([row, day]);
      expect(found(rows, from, from + length)).toEqual(expected);
    }),
  );
});
