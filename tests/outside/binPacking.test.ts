import { existsSync, readFileSync } from "node:fs";
import { resolve } from "node:path";
import { type FewestBags, fewestBags } from "../../src/domain/carry/bags/fewestBags";
import { firstFitBags } from "../../src/domain/carry/bags/firstFitBags";
import { loadOf } from "../domain/carry/bags/loadOf";

// Published instances are read from the reference folder beside the repository and never copied here, since they carry no clear
// licence. What is generated below runs everywhere: its fewest bags are known by the way it is made.

interface Instance {
  readonly name: string;
  readonly capacity: number;
  readonly weights: readonly number[];
  readonly optimum: number;
}

const folder = resolve(__dirname, "../../../shared/reference/binpacking");
const isThere = existsSync(folder);

function publishedInstances(): readonly Instance[] {
  const optima = JSON.parse(readFileSync(resolve(folder, "optima.json"), "utf8")) as {
    u120: { instances: readonly { name: string; optimum: number }[] };
    pm: { instances: readonly Instance[] };
  };
  // The file: how many instances, then for each its name, "capacity count best known", and the weights.
  const words = readFileSync(resolve(folder, "binpack1.txt"), "utf8").split(/\s+/).filter(Boolean);
  let at = 1;
  const u120 = Array.from({ length: Number(words[0]) }, (): Instance => {
    const [name, capacity, count] = [words[at]!, Number(words[at + 1]), Number(words[at + 2])];
    const weights = words.slice(at + 4, at + 4 + count).map(Number);
    at += 4 + count;
    return { name, capacity, weights, optimum: optima.u120.instances.find((one) => one.name === name)!.optimum };
  });
  return [...u120, ...optima.pm.instances];
}

function mostLoaded(weights: readonly number[], { bagOf }: FewestBags): number {
  const loads = new Map<number, number>();
  weights.forEach((weight, index) => loads.set(bagOf[index]!, (loads.get(bagOf[index]!) ?? 0) + weight));
  return Math.max(...loads.values());
}

// OR-Library binpack1 (Falkenauer 1996, class u120) and BPPLib.jl PM_u; optima proved with an arc-flow model or by bound and first fit.
(isThere ? describe : describe.skip)(
  "sixty published instances with proved optima (skipped where the folder is absent)",
  () => {
    const instances = isThere ? publishedInstances() : [];

    it("are sixty", () => expect(instances.length).toBe(60));

    it.each(instances.map((instance) => [instance.name, instance] as const))(
      "%s is packed into the proved fewest bags, and that is proved here, too",
      (_name, { weights, capacity, optimum }) => {
        const packed = fewestBags(weights, capacity);
        expect(packed).toMatchObject({ bagCount: optimum, leastBags: optimum });
        expect(mostLoaded(weights, packed)).toBeLessThanOrEqual(capacity);
      },
    );

    it("of which first fit decreasing misses more than a third", () => {
      const missed = instances.filter(
        ({ weights, capacity, optimum }) => firstFitBags(loadOf(weights, capacity)).length > optimum,
      );
      expect(missed.length).toBeGreaterThan(20);
    });
  },
);

/** Numbers from 0 up to an end, the same every time (the linear congruence of Numerical Recipes). */
function numbers(start: number): (end: number) => number {
  let state = start;
  return (end) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 4294967296) * end);
  };
}

describe("triplets, made so that three fill a bag to the last gram (the way of Falkenauer's class t, 1996; from memory)", () => {
  const CAPACITY = 1000;

  it.each([60, 120, 249, 501])(
    "%i of them: the bound is met, and at most one bag in twenty is more than needed",
    (count) => {
      for (const start of [1, 2, 3]) {
        const below = numbers(start);
        const weights: number[] = [];
        for (let bag = 0; bag < count / 3; bag++) {
          const heaviest = 380 + below(111);
          const second = 250 + below((CAPACITY - heaviest) / 2 - 250);
          weights.push(heaviest, second, CAPACITY - heaviest - second);
        }
        const packed = fewestBags(weights, CAPACITY);
        expect(packed.leastBags).toBe(count / 3);
        expect(packed.bagCount - packed.leastBags).toBeLessThanOrEqual(Math.max(1, count / 60));
        expect(firstFitBags(loadOf(weights, CAPACITY)).length).toBeGreaterThan(packed.bagCount);
        expect(mostLoaded(weights, packed)).toBeLessThanOrEqual(CAPACITY);
      }
    },
  );
});

describe("bags filled to the last gram and emptied again, as a shoot's clothes might weigh", () => {
  it.each([120, 500])("%i pieces go back into as many bags, or one more", (count) => {
    const CAPACITY = 12_000;
    const below = numbers(7);
    const weights: number[] = [];
    while (weights.length < count) {
      let room = CAPACITY;
      while (room > 2500) {
        const grams = 80 + below(1800);
        weights.push(grams);
        room -= grams;
      }
      weights.push(room);
    }
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const packed = fewestBags(weights, CAPACITY);
    expect(packed.leastBags).toBe(total / CAPACITY);
    expect(packed.bagCount).toBeLessThanOrEqual(packed.leastBags + 1);
  });
});
