import { listCells } from "../../src/sheet/listCells";

test("names up to ten cells and counts the others", () => {
  const cells = Array.from({ length: 13 }, (_, row) => ({ row, column: 1 }));
  expect(listCells(cells.slice(0, 2))).toBe("B1, B2");
  expect(listCells(cells.slice(0, 10))).toBe("B1, B2, B3, B4, B5, B6, B7, B8, B9, B10");
  expect(listCells(cells)).toBe("B1, B2, B3, B4, B5, B6, B7, B8, B9, B10 and 3 more");
});
