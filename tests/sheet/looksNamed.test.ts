import { looksNamed } from "../../src/sheet/looksNamed";

const keys = (cell: string, listed: readonly string[] = []): readonly string[] =>
  looksNamed(cell, new Set(listed)).map(({ key }) => key);

test.each([
  ["3", ["3"]],
  ["Look 3", ["3"]],
  ["3, 7", ["3", "7"]],
  ["3 & 7", ["3", "7"]],
  ["3, look 3, 7", ["3", "7"]],
  ["3/7", ["3", "7"]],
  ["3 and 7", ["3", "7"]],
  ["look 3; look 7a", ["3", "7a"]],
  ["1-3", ["1", "2", "3"]],
  ["Looks 1-3", ["1", "2", "3"]],
  ["3, spare", ["3"]],
  ["spare", []],
  ["all looks", []],
  ["tbc", []],
  ["-", []],
  ["Beach", ["beach"]],
])("%p names %p", (cell, expected) => {
  expect(keys(cell)).toEqual(expected);
});

test("a cell that is one listed look as a whole is that look, whatever signs stand in it", () => {
  expect(keys("1-3", ["1.3"])).toEqual(["1.3"]);
  expect(keys("Sun & Sand", ["sunsand"])).toEqual(["sunsand"]);
});
