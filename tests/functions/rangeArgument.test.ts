import { rangeArgument } from "../../src/functions/rangeArgument";

test.each([[null], [undefined], [""], [" "], [0], [[]], [[[]]], [[[null]]], [[[0]]], [[[""]]]])(
  "%j is a blank range",
  (raw) => {
    expect(rangeArgument(raw)).toBeNull();
  },
);

test("a single value is a range of one cell, for a host that passes one cell so", () => {
  expect(rangeArgument("Piece")).toEqual([["Piece"]]);
  expect(rangeArgument(46083)).toEqual([[46083]]);
});

test("a flat list is one row", () => {
  expect(rangeArgument([1, 2])).toEqual([[1, 2]]);
});

test("a range is passed on as it is and not copied", () => {
  const cells = [
    [1, null],
    [0, ""],
  ];
  expect(rangeArgument(cells)).toBe(cells);
});

test("a column of blanks is a range still: its reader says what is missing", () => {
  expect(rangeArgument([[null], [null]])).toEqual([[null], [null]]);
});
