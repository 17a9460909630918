import { projectEnd } from "../../src/domain/plan/projectEnd";
import { shortestProject } from "../../src/domain/plan/shortestProject";
import { faultsOf } from "../domain/plan/faultsOf";
import gaps from "./gapsReached.json";
import printed from "./criticalPathExamples.json";
import { areInstancesThere, instanceText, jobShopProject, psplibProject } from "./publishedProjects";

// Schedules of projects against published optima: PSPLIB (Kolisch and Sprecher 1996) and the job shops of Fisher and
// Thompson (1963) and Lawrence (1984). Every schedule is checked by code that shares nothing with the search.

const stated = (name: string) => gaps.rows.find((row) => row.instance === name);

interface Printed {
  readonly d: number;
  readonly pred: readonly string[];
}

test.each(printed.examples)("a network without resources is proved as short as printed: $source", (example) => {
  const entries = Object.entries(example.activities as unknown as Record<string, Printed>);
  const indexOf = new Map(entries.map(([name], index) => [name, index]));
  const activities = entries.map(([, { d, pred }]) => ({
    length: d,
    releasedAt: 0,
    before: pred.map((name) => indexOf.get(name)!),
    needs: [],
  }));
  const project = { activities, capacities: [] };
  const found = shortestProject(project);
  expect(faultsOf(project, found.starts)).toEqual([]);
  expect([found.end, found.bound]).toEqual([example.duration, example.duration]);
});

const hasPsplib = areInstancesThere("psplib");
const optima = hasPsplib
  ? (JSON.parse(instanceText("psplib", "optima.json")) as { optima: Record<string, { makespan: number }> }).optima
  : {};

(hasPsplib ? test : test.skip)(
  "PSPLIB j30: on average within 0.5% of the optimum at the default effort (skipped where the instances are absent)",
  () => {
    const gaps = Object.entries(optima).map(([name, { makespan }]) => {
      const project = psplibProject(name);
      const { starts, end, bound } = shortestProject(project);
      expect(faultsOf(project, starts)).toEqual([]);
      expect(end).toBe(projectEnd(project, starts));
      expect(bound).toBeLessThanOrEqual(makespan);
      expect(end).toBeGreaterThanOrEqual(makespan);
      expect(stated(name)).toMatchObject({ optimum: makespan, reached: end, bound });
      return end / makespan - 1;
    });
    expect(gaps.length).toBe(9);
    expect(gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length).toBeLessThanOrEqual(0.005);
    // None is further off than one day in the hardest.
    expect(Math.max(...gaps)).toBeLessThanOrEqual(0.02);
  },
  240_000,
);

const hasJobShops = areInstancesThere("jobshop");
const shops = [
  ["ft06", 55, 0],
  ["la01", 666, 0],
  ["la02", 655, 0.025],
] as const;

(hasJobShops ? test : test.skip).each(shops)(
  "job shop %s: optimum %d, reached within %d (skipped where the instances are absent)",
  (name, optimum, gap) => {
    const project = jobShopProject(name);
    const { starts, end, bound } = shortestProject(project);
    expect(faultsOf(project, starts)).toEqual([]);
    expect(bound).toBeLessThanOrEqual(optimum);
    expect(end).toBeGreaterThanOrEqual(optimum);
    expect(end / optimum - 1).toBeLessThanOrEqual(gap);
    expect(stated(name)).toMatchObject({ optimum, reached: end, bound });
  },
  240_000,
);
