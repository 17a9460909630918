import fc from "fast-check";
import { lateRows } from "../../../src/domain/loans/lateRows";
import type { Problem } from "../../../src/domain/problem";
import { anyPieceRows } from "./anyPieceRows";
import { singlePiecesHeld } from "./singlePiecesHeld";
import { pieceRowsOf } from "./pieceRowsOf";

const unread: Problem = { reason: "date-not-understood", facts: { argument: "Due, row 2", given: "soon" } };

test("a piece due on the day is not late, and one due the day before is a day late", () => {
  const pieces = pieceRowsOf([
    { out: 90, due: 100 },
    { out: 90, due: 99 },
  ]);
  expect(lateRows(pieces, 100)).toEqual([expect.objectContaining({ row: 2, daysLate: 1 })]);
});

test("the most late come first, then the most valuable by what is still out, then in sheet order", () => {
  const pieces = pieceRowsOf([
    { out: 90, due: 98, value: 10 },
    { out: 90, due: 95, value: 1 },
    { out: 90, due: 98, value: 30, quantity: 3, back: 99, quantityBack: 2 },
    { out: 90, due: 98, value: 10, quantity: 4 },
    { out: 90, due: 98, value: 10 },
    { out: 90, due: 98 },
  ]);
  expect(lateRows(pieces, 100).map(({ row }) => row)).toEqual([2, 4, 3, 1, 5, 6]);
});

test("a day it was extended to stands in for the due day", () => {
  const pieces = pieceRowsOf([
    { out: 90, due: 95, extendedTo: 100 },
    { out: 90, due: 105, extendedTo: 98 },
  ]);
  expect(lateRows(pieces, 100)).toEqual([expect.objectContaining({ row: 2, daysLate: 2 })]);
});

test("pieces without a due day, settled, back or not yet out are not late", () => {
  const pieces = pieceRowsOf([
    { out: 90 },
    { out: 90, due: 95, settled: true },
    { out: 90, due: 95, back: 100 },
    { out: 101, due: 95 },
    { due: 95 },
  ]);
  expect(lateRows(pieces, 100)).toEqual([]);
});

test("a piece that comes back after the day looked at is late still", () => {
  expect(lateRows(pieceRowsOf([{ out: 90, due: 95, back: 101 }]), 100)).toEqual([
    expect.objectContaining({ daysLate: 5 }),
  ]);
});

test("a row of which it cannot be told stands last, with its problem", () => {
  const pieces = pieceRowsOf([
    { out: 90, due: unread },
    { out: 90, due: 99 },
    { out: 90, due: 99, back: unread },
    { out: 90, due: unread, back: 95 },
    { out: 90, due: 105, back: unread },
  ]);
  expect(lateRows(pieces, 100)).toEqual([
    expect.objectContaining({ row: 2, daysLate: 1 }),
    { row: 1, daysLate: unread },
    { row: 3, daysLate: unread },
  ]);
});

test("a value that cannot be read hides no late row", () => {
  expect(lateRows(pieceRowsOf([{ out: 90, due: 99, value: unread }]), 100)).toEqual([
    expect.objectContaining({ row: 1, daysLate: 1 }),
  ]);
});

test("agrees with single pieces followed day by day", () => {
  fc.assert(
    fc.property(anyPieceRows, fc.integer({ min: 99, max: 116 }), (rows, asOf) => {
      const late = singlePiecesHeld(rows, asOf, false).filter(({ due }) => due !== null && due < asOf);
      const cents = (row: number) =>
        late.filter((piece) => piece.row === row).reduce((sum, piece) => sum + (piece.cents ?? 0), 0);
      const expected = [...new Set(late.map(({ row }) => row))]
        .map((row) => ({ row, daysLate: asOf - late.find((piece) => piece.row === row)!.due!, cents: cents(row) }))
        .sort((a, b) =>
          a.daysLate !== b.daysLate ? b.daysLate - a.daysLate : a.cents !== b.cents ? b.cents - a.cents : a.row - b.row,
        )
        .map(({ row, daysLate }) => ({ row, daysLate }));
      expect(lateRows(pieceRowsOf(rows), asOf).map(({ row, daysLate }) => ({ row, daysLate }))).toEqual(expected);
    }),
  );
});
