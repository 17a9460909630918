import fc from "fast-check";
import { coveredIndex } from "../../src/sheet/coveredIndex";

const fifteen = () => 15;

test.each([
  ["a picture within a row belongs to that row", 32, 5, 2],
  ["one that fills its row to the edges belongs to it", 30, 15, 2],
  ["one that begins a little above its row belongs to the row it fills", 28, 16, 2],
  ["one that begins in the upper half of a row and goes on over many belongs to the row where it begins", 35, 300, 2],
  ["one that begins in the lower half of a row and goes on over many belongs to the next", 40, 300, 3],
  ["one that covers no half belongs to the row it covers more of", 41, 6, 2],
  ["and to the later one where it covers more of that", 43, 6, 3],
  ["one at the very edge belongs to the first row", 0, 1, 0],
  ["one that begins below all rows belongs to the last", 900, 10, 39],
])("%s", (_, start, length, expected) => {
  expect(coveredIndex(start, length, fifteen, 40)).toBe(expected);
});

test("no picture belongs to a hidden row", () => {
  const sizeOf = (index: number) => (index === 2 || index === 3 ? 0 : 15);
  expect(coveredIndex(30, 12, sizeOf, 40)).toBe(4);
  expect(coveredIndex(28, 12, sizeOf, 40)).toBe(4);
});

test("it is the row that a count of every hundredth of a row gives", () => {
  const sizes = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(sizes, fc.integer({ min: 0, max: 200 }), fc.integer({ min: 1, max: 200 }), (heights, start, length) => {
      const rowOfUnit = heights.flatMap((size, index) => Array.from({ length: size }, () => index));
      fc.pre(start < rowOfUnit.length);
      const covered = new Map<number, number>();
      for (const row of rowOfUnit.slice(start, start + length)) covered.set(row, (covered.get(row) ?? 0) + 1);
      const isHalf = ([row, units]: readonly [number, number]) => units * 2 >= (heights[row] ?? 0);
      const most = [...covered].sort(([, a], [, b]) => b - a)[0];
      const expected = [...covered].find(isHalf) ?? most;
      // Below the last row there is nothing to be covered, so the picture ends with the sheet.
      const end = Math.min(length, rowOfUnit.length - start);
      expect(coveredIndex(start, end, (index) => heights[index] ?? 0, heights.length)).toBe(expected?.[0]);
    }),
  );
});
