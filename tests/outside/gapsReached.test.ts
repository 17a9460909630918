import { readFileSync } from "node:fs";
import { join } from "node:path";
import gaps from "./gapsReached.json";

// The figures are held against the searches themselves in projects.test.ts and orderings.test.ts, where the instances are.

const percent = (share: number): string => `${(100 * share).toFixed(2)}%`;
const lines = gaps.rows.map(({ set, instance, optimum, reached, bound }) => [
  `${set} ${instance}`,
  String(optimum),
  String(reached),
  percent(reached / optimum - 1),
  bound === reached ? "proved" : String(bound),
]);
const cellsOf = (line: string): string[] =>
  line
    .split("|")
    .slice(1, -1)
    .map((cell) => cell.trim());

test.each(lines)("%s: optimum %s, reached %s, %s over it; bound: %s", (...line) => {
  const guide = readFileSync(join(__dirname, "../../DEVELOPERS.md"), "utf8").split("\n").map(cellsOf);
  expect(guide).toContainEqual(line);
});

test("the mean gap over the projects of PSPLIB is the one the guide states", () => {
  const projects = gaps.rows.filter(({ set }) => set === "PSPLIB j30");
  const mean = projects.reduce((sum, { optimum, reached }) => sum + reached / optimum - 1, 0) / projects.length;
  expect(mean).toBeLessThanOrEqual(0.005);
  expect(readFileSync(join(__dirname, "../../DEVELOPERS.md"), "utf8")).toContain(
    `mean gap over PSPLIB j30 is ${percent(mean)}`,
  );
});
