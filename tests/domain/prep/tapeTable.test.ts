import type { ShoeRow } from "../../../src/domain/prep/shoeRow";
import { tapeTable } from "../../../src/domain/prep/tapeTable";
import type { Problem } from "../../../src/domain/problem";

const shoes = (given: Partial<ShoeRow>): ShoeRow => ({
  name: "Pumps",
  footMm: 240,
  isOutside: false,
  pairs: null,
  sizeCell: "Size, row 2",
  whereCell: "Where, row 2",
  ...given,
});
const row = (given: Partial<ShoeRow>) => tapeTable([shoes(given)], 50, 5).rows[0];
const missing = (argument: string, expected: string): Problem => ({
  reason: "argument-missing",
  facts: { argument, expected },
});

test("painter's tape alone inside, both outside, pairs counted", () => {
  expect(row({})).toEqual(["Pumps", 1, 1.53, 0]);
  expect(row({ isOutside: true, pairs: 2 })).toEqual(["Pumps", 2, 3.06, 3.06]);
});

test("a blank place leaves the painter's tape, which both take; a blank size leaves the layers", () => {
  const place = missing("Where, row 2", "inside or outside");
  expect(row({ isOutside: null })).toEqual(["Pumps", place, 1.53, place]);
  const size = missing("Size, row 2", "the shoe size, such as 38");
  expect(row({ footMm: null })).toEqual(["Pumps", 1, size, 0]);
  expect(row({ footMm: null, isOutside: true })).toEqual(["Pumps", 2, size, size]);
});

test("a cell that cannot be read stands in the figures that depend on it", () => {
  const problem: Problem = { reason: "error-in-cell", facts: { argument: "Pairs, row 2", given: "#N/A" } };
  expect(row({ pairs: problem, isOutside: true })).toEqual(["Pumps", 2, problem, problem]);
});
