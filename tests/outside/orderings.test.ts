import gaps from "./gapsReached.json";
import { atOnce } from "../../src/domain/plan/atOnce";
import { keepsRules } from "../../src/domain/plan/keepsRules";
import { orderWithin } from "../../src/domain/plan/orderWithin";
import { searchedOrder } from "../../src/domain/plan/searchedOrder";
import { orderingOfTour, orderingWithPrecedences, stepsOf, taskOf } from "./ordering";
import { areInstancesThere, instanceText } from "./publishedProjects";

// Orderings whose changes depend on what came before, against the optima of TSPLIB95 (Reinelt): tours in one direction,
// as orders from a fixed first to a copy of it as last, and orderings with precedences. The same search as for looks.

const isThere = areInstancesThere("tsplib");

const stated = (name: string, set: string) => gaps.rows.find((row) => row.instance === name && row.set === set)!;

/** The figures of an instance, a square of costs; an .sop file says its size once more in front of them. */
function costsOf(file: string): number[][] {
  const text = instanceText("tsplib", file);
  const size = Number(/DIMENSION:\s*(\d+)/.exec(text)![1]);
  const figures = /EDGE_WEIGHT_SECTION([\s\d-]+)/.exec(text)![1]!.trim().split(/\s+/).map(Number);
  const square = figures.slice(-size * size);
  return square.map((_, at) => square.slice(at * size, (at + 1) * size)).slice(0, size);
}

(isThere ? test : test.skip).each([
  ["ESC07", 2125],
  ["ESC11", 2075],
  ["br17.10", 55],
])("with precedences, %s.sop is proved best at %d (skipped where the instances are absent)", (name, optimum) => {
  const ordering = orderingWithPrecedences(costsOf(`${name}.sop`));
  const task = taskOf(ordering);
  const found = atOnce(
    searchedOrder(task, stepsOf(ordering), orderWithin(task)!, { tries: 2000, beginnings: 1e6, seed: 1 }),
  );
  expect(keepsRules(task, found.order)).toBe(true);
  expect(task.cost(found.order)).toBe(optimum);
  expect([found.cost, found.bound]).toEqual([optimum, optimum]);
  expect(stated(name, "TSPLIB .sop")).toMatchObject({ optimum, reached: found.cost, bound: found.bound });
});

(isThere ? test : test.skip).each([
  ["br17", 39, 0, 1],
  ["ftv33", 1286, 0, 6],
  ["ftv38", 1530, 0, 7],
  ["p43", 5620, 0.0005, 3],
])(
  "one way, %s.atsp: optimum %d, within %d of it by the best of %d searches, and never a false bound (skipped where absent)",
  (name, optimum, gap, searches) => {
    const ordering = orderingOfTour(costsOf(`${name}.atsp`));
    const task = taskOf(ordering);
    const start = orderWithin(task)!;
    let best = Infinity;
    for (let seed = 1; seed <= searches && best > optimum; seed++) {
      const found = atOnce(searchedOrder(task, stepsOf(ordering), start, { tries: 300_000, beginnings: 0, seed }));
      expect(keepsRules(task, found.order)).toBe(true);
      expect(task.cost(found.order)).toBe(found.cost);
      expect(found.bound).toBeLessThanOrEqual(optimum);
      best = Math.min(best, found.cost);
    }
    expect(best).toBeGreaterThanOrEqual(optimum);
    expect(best / optimum - 1).toBeLessThanOrEqual(gap);
    expect(stated(name, "TSPLIB .atsp")).toMatchObject({ optimum, reached: best });
  },
  240_000,
);

(isThere ? test : test.skip).each([
  ["br17", 39],
  ["ftv33", 1286],
  ["ftv38", 1530],
  ["p43", 5620],
])(
  "a layered search that drops beginnings says a bound for %s that does not pass %d (skipped where absent)",
  (name, optimum) => {
    const ordering = orderingOfTour(costsOf(`${name}.atsp`));
    const task = taskOf(ordering);
    const found = atOnce(
      searchedOrder(task, stepsOf(ordering), orderWithin(task)!, { tries: 1, beginnings: 10_000, seed: 1 }),
    );
    expect(found.bound).toBeLessThanOrEqual(optimum);
    expect(found.cost).toBeGreaterThanOrEqual(optimum);
    expect(stated(name, "TSPLIB .atsp").bound).toBe(found.bound);
  },
);
