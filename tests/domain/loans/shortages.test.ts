import fc from "fast-check";
import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import { shortages } from "../../../src/domain/loans/shortages";
import type { Problem } from "../../../src/domain/problem";
import { anyPieceRows } from "./anyPieceRows";
import { pieceRowsOf } from "./pieceRowsOf";

const unread: Problem = { reason: "date-not-understood", facts: { argument: "Back, row 2", given: "soon" } };
const says = (out: string | null, back: string): boolean => back !== "good" && back !== out;
const found = (rows: readonly Partial<PieceRow>[]): unknown =>
  shortages(pieceRowsOf(rows), says).map(({ row, piecesMissing, isDamaged, valueMissing }) => [
    row,
    piecesMissing,
    isDamaged,
    valueMissing,
  ]);

test("what is missing is the quantity less the quantity back, with its value", () => {
  // By hand: 2 x 20.20 = 40.40; a third of 100 is 33.33.
  expect(
    found([
      { back: 100, quantity: 6, quantityBack: 4, value: 20.2 },
      { back: 100, quantity: 3, quantityBack: 2, totalValue: 100 },
      { back: 100, quantity: 2, quantityBack: 1 },
    ]),
  ).toEqual([
    [1, 2, false, 40.4],
    [2, 1, false, 33.33],
    [3, 1, false, null],
  ]);
});

test("rows that are not back, came back whole or are settled are left out", () => {
  expect(
    found([
      { quantity: 6, quantityBack: 4 },
      { back: 100, quantity: 6 },
      { back: 100, quantity: 6, quantityBack: 0 },
      { back: 100, quantity: 6, quantityBack: 6, conditionBack: "good" },
      { back: 100, quantity: 2, quantityBack: 3 },
      { back: 100, quantity: 2, quantityBack: 1, settled: true },
      { conditionBack: "torn" },
    ]),
  ).toEqual([]);
});

test("damage is told beside what is missing, and by itself", () => {
  expect(
    found([
      { back: 100, conditionOut: "worn", conditionBack: "worn" },
      { back: 100, conditionBack: "torn", value: 90 },
      { back: 100, conditionBack: "torn", quantity: 2, quantityBack: 1, value: 90 },
    ]),
  ).toEqual([
    [2, 0, true, 0],
    [3, 1, true, 90],
  ]);
});

test("a cell that cannot be read stands in the figures that depend on it, where anything would be short", () => {
  expect(
    found([
      { back: unread, conditionBack: "good" },
      { back: unread, conditionBack: "torn" },
      { back: 100, quantityBack: unread, value: 5 },
      { back: 100, quantity: unread, quantityBack: 1 },
      { back: 100, quantity: 2, quantityBack: 1, value: unread },
      { back: 100, quantity: 2, quantityBack: 1, settled: unread },
      { back: 100, conditionBack: unread },
      { back: 100, conditionOut: unread, conditionBack: "good" },
      { back: 100, conditionOut: unread, conditionBack: "torn" },
    ]),
  ).toEqual([
    [2, unread, true, unread],
    [3, unread, false, unread],
    [4, unread, false, unread],
    [5, 1, false, unread],
    [6, unread, false, unread],
    [7, 0, unread, 0],
    [9, 0, unread, 0],
  ]);
});

test("agrees with single pieces counted in one by one", () => {
  const rows = anyPieceRows.chain((pieces) =>
    fc
      .array(fc.constantFrom(null, "good", "torn"), { minLength: pieces.length, maxLength: pieces.length })
      .map((conditions) => pieces.map((piece, place) => ({ ...piece, conditionBack: conditions[place]! }))),
  );
  fc.assert(
    fc.property(rows, (pieces) => {
      const expected = [];
      for (const piece of pieces) {
        if (piece.back === null || piece.settled === true) continue;
        const slip = Array.from({ length: (piece.quantity as number) || 1 }, (_, number) => number);
        const countedIn = new Set(slip);
        if (piece.quantityBack) countedIn.clear();
        for (let number = 0; number < ((piece.quantityBack as number) ?? 0); number++) countedIn.add(number);
        let missing = 0;
        let cents = 0;
        for (const number of slip) {
          if (countedIn.has(number)) continue;
          missing++;
          cents += Number(((piece.value as number) ?? 0).toFixed(2).replace(".", ""));
        }
        const damaged = piece.conditionBack === "torn";
        if (missing > 0 || damaged)
          expected.push([piece.row, missing, damaged, missing > 0 && !piece.value ? null : cents / 100]);
      }
      expect(found(pieces)).toEqual(expected);
    }),
  );
});
