import fc from "fast-check";
import { cellBlocks } from "../../src/excel/cellBlocks";

const place = fc.record({ row: fc.nat(7), column: fc.nat(7) });
const places = fc.uniqueArray(place, { selector: ({ row, column }) => row * 100 + column });

test("a filled rectangle is one block, row by row", () => {
  const items = [1, 2, 3].flatMap((row) => [4, 5].map((column) => ({ at: { row, column } })));
  const [block, ...others] = cellBlocks(items.reverse());
  expect(others).toEqual([]);
  expect(block?.items.map((row) => row.map((item) => item.at.row * 10 + item.at.column))).toEqual([
    [14, 15],
    [24, 25],
    [34, 35],
  ]);
});

test("a column with a gap is two blocks", () => {
  const items = [0, 1, 3].map((row) => ({ at: { row, column: 2 } }));
  expect(cellBlocks(items).map((block) => [block.row, block.column, block.items.length])).toEqual([
    [0, 2, 2],
    [3, 2, 1],
  ]);
});

test("every item stands in exactly one block, at its own place, and no block has a hole", () => {
  fc.assert(
    fc.property(places, (all) => {
      const items = all.map((at) => ({ at }));
      const placed = cellBlocks(items).flatMap((block) =>
        block.items.flatMap((row, r) =>
          row.map((item, c) => {
            expect(item.at).toEqual({ row: block.row + r, column: block.column + c });
            expect(row.length).toBe(block.items[0]?.length);
            return item;
          }),
        ),
      );
      expect(placed).toHaveLength(items.length);
      expect(new Set(placed)).toEqual(new Set(items));
    }),
  );
});
