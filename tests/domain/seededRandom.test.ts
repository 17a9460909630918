import { seededRandom } from "../../src/domain/seededRandom";

function drawn(seed: number, count: number): number[] {
  const draw = seededRandom(seed);
  return Array.from({ length: count }, draw);
}

test("one seed gives one row of numbers, another seed another", () => {
  expect(drawn(1, 50)).toEqual(drawn(1, 50));
  expect(drawn(1, 50)).not.toEqual(drawn(2, 50));
});

test("the first number of a thousand seeds in a row falls into every tenth about a hundred times", () => {
  const counts = new Array<number>(10).fill(0);
  for (let seed = 0; seed < 1000; seed++) counts[Math.floor(drawn(seed, 1)[0]! * 10)]!++;
  // Chi-square with 9 degrees of freedom: 27.9 is passed once in a thousand times.
  expect(counts.reduce((sum, count) => sum + (count - 100) ** 2 / 100, 0)).toBeLessThan(27.9);
});

test("numbers that follow each other show no likeness, and lie from 0 up to but not with 1", () => {
  const row = drawn(7, 20_000);
  expect(Math.min(...row)).toBeGreaterThanOrEqual(0);
  expect(Math.max(...row)).toBeLessThan(1);
  const mean = row.reduce((sum, each) => sum + each, 0) / row.length;
  expect(Math.abs(mean - 0.5)).toBeLessThan(4 * Math.sqrt(1 / 12 / row.length));
  const likeness = row.slice(1).reduce((sum, each, at) => sum + (each - 0.5) * (row[at]! - 0.5), 0) / row.length;
  expect(Math.abs(likeness)).toBeLessThan(4 * (1 / 12 / Math.sqrt(row.length)));
});
