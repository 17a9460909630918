import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import { quantityHeld } from "../../../src/domain/loans/quantityHeld";
import type { Problem } from "../../../src/domain/problem";
import { pieceRowOf } from "./pieceRowOf";

// The rules of what is held: common practice, no source.
const unread: Problem = { reason: "date-not-understood", facts: { argument: "Back, row 2", given: "soon" } };

const cases: readonly [title: string, fields: Partial<PieceRow>, day: number, held: number | Problem][] = [
  ["a piece is held from its out day on", { out: 100 }, 100, 1],
  ["the day before it is not", { out: 100 }, 99, 0],
  ["a row without an out day is not held", { out: null }, 100, 0],
  ["on its back day a piece is no longer held", { out: 100, back: 105 }, 105, 0],
  ["the day before it still is", { out: 100, back: 105 }, 104, 1],
  ["a quantity that is blank is 1", { out: 100, quantity: null }, 100, 1],
  ["a quantity of 0 is 1", { out: 100, quantity: 0 }, 100, 1],
  ["the quantity is held", { out: 100, quantity: 3 }, 100, 3],
  ["once back, what did not come back is still held", { out: 100, quantity: 3, back: 105, quantityBack: 2 }, 105, 1],
  ["before that, all of it is", { out: 100, quantity: 3, back: 105, quantityBack: 2 }, 104, 3],
  ["a quantity back that is blank means all", { out: 100, quantity: 3, back: 105 }, 106, 0],
  ["a quantity back of 0 means all", { out: 100, quantity: 3, back: 105, quantityBack: 0 }, 106, 0],
  ["more back than went out leaves nothing held", { out: 100, quantity: 2, back: 105, quantityBack: 5 }, 106, 0],
  ["a settled row is not held", { out: 100, settled: true }, 100, 0],
  ["a row that says it is not settled is held", { out: 100, settled: false }, 100, 1],
  ["a back day that cannot be read leaves it open", { out: 100, back: unread }, 100, unread],
  ["but not for a row that is settled", { out: 100, back: unread, settled: true }, 100, 0],
  ["nor for a row that went out later", { out: 100, back: unread }, 99, 0],
  ["an out day that cannot be read leaves it open", { out: unread }, 100, unread],
  ["but not once all is back", { out: unread, back: 90 }, 100, 0],
  ["a quantity that cannot be read leaves it open", { out: 100, quantity: unread }, 100, unread],
  ["but not once all is back, whatever it was", { out: 100, quantity: unread, back: 101 }, 105, 0],
  [
    "a quantity back that cannot be read leaves it open",
    { out: 100, quantity: 3, back: 101, quantityBack: unread },
    105,
    unread,
  ],
  ["but does not matter before the back day", { out: 100, quantity: 3, back: 107, quantityBack: unread }, 105, 3],
];

test.each(cases)("%s", (_title, fields, day, held) => {
  expect(quantityHeld(pieceRowOf(fields), day)).toEqual(held);
});

test("counting the back day, a piece is held on it and no longer the day after", () => {
  const piece = pieceRowOf({ out: 100, back: 105 });
  expect(quantityHeld(piece, 105, true)).toBe(1);
  expect(quantityHeld(piece, 106, true)).toBe(0);
});
