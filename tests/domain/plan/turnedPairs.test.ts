import { turnedPairs } from "../../../src/domain/plan/turnedPairs";

test.each([
  ["as numbered, none", [0, 1, 2], 0],
  ["one thing moved past two others, two", [1, 2, 0], 2],
  ["the other way about, every pair", [3, 2, 1, 0], 6],
])("%s", (_, order, turned) => {
  expect(turnedPairs(order)).toBe(turned);
});
