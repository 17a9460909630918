import type { Problem } from "../../src/domain/problem";
import { problemIn } from "../../src/functions/problemIn";

test("a problem is one, and what a cell can show is none", () => {
  const problem: Problem = { reason: "nothing-to-compute", facts: { what: "a total", fill: "value" } };
  expect(problemIn(problem)).toBe(problem);
  expect([0, -1.5, "", "late", true, null].map(problemIn)).toEqual(Array(6).fill(null));
});

test("a number that is not finite is one, since hosts would show it as 0", () => {
  for (const cell of [NaN, Infinity, -Infinity]) expect(problemIn(cell)).toMatchObject({ reason: "result-not-finite" });
});
