import { sortCorrection } from "../../../src/bench/functions/sortCorrection";

test("sorts by a column, either way, and leaves its input alone", () => {
  const rows = [
    ["Wren Archive", 3],
    ["Halden Knitworks", 9],
    ["Orla & Finch", 3],
  ];
  const before = JSON.stringify(rows);
  expect(sortCorrection(rows, 2, -1)).toEqual([
    ["Halden Knitworks", 9],
    ["Wren Archive", 3],
    ["Orla & Finch", 3],
  ]);
  expect(JSON.stringify(rows)).toBe(before);
});

test("numbers come before text, text before truth values, and blanks last whichever way", () => {
  const column = [["b"], [null], [true], [2], ["A"], [1]];
  expect(sortCorrection(column).flat()).toEqual([1, 2, "A", "b", true, null]);
  expect(sortCorrection(column, 1, -1).flat()).toEqual([true, "b", "A", 2, 1, null]);
});

test("sorts columns by a row when asked", () => {
  const rows = [
    [3, 1, 2],
    ["c", "a", "b"],
  ];
  expect(sortCorrection(rows, 1, 1, true)).toEqual([
    [1, 2, 3],
    ["a", "b", "c"],
  ]);
});

test("a column that is not there and an order that is none are refused", () => {
  expect(() => sortCorrection([[1]], 2)).toThrow();
  expect(() => sortCorrection([[1]], 1, 5)).toThrow();
});
