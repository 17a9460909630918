import { areaOfReference } from "../../src/sheet/areaOfReference";

test.each([
  ["B2", [1, 1, 1, 1]],
  ["$B$2:F11", [1, 1, 10, 5]],
  ["A:C", [0, 0, 1_048_575, 2]],
  ["C", [0, 2, 1_048_575, 2]],
  ["2:4", [1, 0, 3, 16_383]],
  [" aa10 ", [9, 26, 9, 26]],
])("%j is an area, both ends counted", (reference, [startRow, startColumn, endRow, endColumn]) => {
  expect(areaOfReference(reference)).toEqual({ startRow, startColumn, endRow, endColumn });
});

test.each(["", "B2:", ":B2", "Loans[Due]", "#REF!", "B2:C3:D4"])("%j is none", (reference) => {
  expect(areaOfReference(reference)).toBeNull();
});
