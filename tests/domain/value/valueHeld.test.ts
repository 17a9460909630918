import { valueHeld } from "../../../src/domain/value/valueHeld";
import type { Problem } from "../../../src/domain/problem";
import { pieceRowOf } from "../loans/pieceRowOf";

const unread: Problem = { reason: "error-in-cell", facts: { argument: "Value, row 2", given: "#N/A" } };

test("the value of one piece is multiplied by how many are held", () => {
  expect(valueHeld(pieceRowOf({ value: 20.2 }), 3)).toBe(606_000);
});

test("the value of the whole row is taken once", () => {
  expect(valueHeld(pieceRowOf({ totalValue: 60.6, quantity: 3 }), 3)).toBe(606_000);
});

test("part of a row is worth its share of the row's value, to the cent", () => {
  expect(valueHeld(pieceRowOf({ totalValue: 100, quantity: 3 }), 1)).toBe(333_300);
  expect(valueHeld(pieceRowOf({ totalValue: 100, quantity: 3 }), 2)).toBe(666_700);
});

test("where both stand, the value of one piece is used", () => {
  expect(valueHeld(pieceRowOf({ value: 10, totalValue: 999 }), 2)).toBe(200_000);
});

test("blank and 0 are no value, and then the value of the row is used", () => {
  expect(valueHeld(pieceRowOf({}), 1)).toBeNull();
  expect(valueHeld(pieceRowOf({ value: 0 }), 1)).toBeNull();
  expect(valueHeld(pieceRowOf({ value: 0, totalValue: 5 }), 1)).toBe(50_000);
  expect(valueHeld(pieceRowOf({ totalValue: 0 }), 1)).toBeNull();
});

test("what cannot be read is its problem", () => {
  expect(valueHeld(pieceRowOf({ value: unread, totalValue: 5 }), 1)).toBe(unread);
  expect(valueHeld(pieceRowOf({ totalValue: unread }), 1)).toBe(unread);
  expect(valueHeld(pieceRowOf({ totalValue: 5, quantity: unread }), 1)).toBe(unread);
});
