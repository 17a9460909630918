import fc from "fast-check";
import { cellName } from "../../src/sheet/cellName";

// The published limits of a sheet: 1,048,576 rows and 16,384 columns, so that the last cell is XFD1048576.
test.each([
  [0, 0, "A1"],
  [7, 3, "D8"],
  [0, 25, "Z1"],
  [0, 26, "AA1"],
  [0, 701, "ZZ1"],
  [0, 702, "AAA1"],
  [1_048_575, 16_383, "XFD1048576"],
])("row %i, column %i is %s", (row, column, name) => {
  expect(cellName(row, column)).toBe(name);
});

test("no two columns have the same name, and letters count as a number of base 26 without a nought", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 16_383 }), (column) => {
      const letters = cellName(0, column).slice(0, -1);
      const back = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
      expect(back).toBe(column);
    }),
  );
});
