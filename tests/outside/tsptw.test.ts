import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { bestOrder } from "../../src/domain/runs/bestOrder";
import { runOf } from "./runOf";

// Instances with time windows of Dumas, Desrosiers, Gelinas and Solomon (1995) and of Solomon, Potvin and Bengio, read where they were
// collected and never copied; the least makespans beside them are proved. Without the folder, highsRuns.test.ts and everyOrder hold.

const folder = join(__dirname, "../../../shared/reference/tsptw");
const isThere = existsSync(folder);
const names = isThere
  ? readdirSync(folder).filter((file) => file.endsWith(".txt"))
  : ["(the reference folder is absent)"];
const optima = (isThere ? JSON.parse(readFileSync(join(folder, "optima.json"), "utf8")) : { optima: {} }) as {
  optima: Record<string, { min_makespan: number; min_travel_cost: number }>;
};

(isThere ? test : test.skip).each(names)("the least makespan of %s, proved", (name) => {
  const figures = readFileSync(join(folder, name), "utf8").trim().split(/\s+/).map(Number);
  const size = figures[0]!;
  const minutes = Array.from({ length: size }, (_, row) => figures.slice(1 + row * size, 1 + (row + 1) * size));
  const windows = Array.from({ length: size }, (_, row) => {
    const at = 1 + size * size + 2 * row;
    return [figures[at]!, figures[at + 1]!] as const;
  });
  const best = bestOrder(runOf(minutes, windows));
  const published = optima.optima[name.replace(".txt", "")]!;
  expect(best.order.length).toBe(size - 1);
  // Printed with two decimals.
  expect(best.endMs / 60_000).toBeCloseTo(published.min_makespan, 2);
  expect(best.travelMs / 60_000).toBeGreaterThan(published.min_travel_cost - 0.01);
  expect(best.isProved).toBe(true);
});
