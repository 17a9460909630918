import { areaOfAddress } from "../../src/excel/areaOfAddress";

test.each([
  ["B2", { row: 1, column: 1, rowCount: 1, columnCount: 1 }],
  ["B2:D5", { row: 1, column: 1, rowCount: 4, columnCount: 3 }],
  ["$B$2:$D$5", { row: 1, column: 1, rowCount: 4, columnCount: 3 }],
  ["Pieces!B2", { row: 1, column: 1, rowCount: 1, columnCount: 1 }],
  ["'Day! one'!AA10", { row: 9, column: 26, rowCount: 1, columnCount: 1 }],
  ["C:D", { row: 0, column: 2, rowCount: 1_048_576, columnCount: 2 }],
  ["4:9", { row: 3, column: 0, rowCount: 6, columnCount: 16_384 }],
])("%s", (address, area) => {
  expect(areaOfAddress(address)).toEqual(area);
});

test.each(["", "Table1[Due]", "#REF!", "B2:"])("%j is no area", (address) => {
  expect(areaOfAddress(address)).toBeNull();
});
