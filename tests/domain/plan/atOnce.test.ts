import { lookOrder } from "../../../src/domain/day/lookOrder";
import { lookOrderStepwise } from "../../../src/domain/day/lookOrderStepwise";
import { atOnce } from "../../../src/domain/plan/atOnce";
import { sampleDay, sampleLook } from "../day/sampleLook";

test("work done at once comes to what it comes to step by step", () => {
  function* counted() {
    yield;
    yield;
    return 3;
  }
  expect(atOnce(counted())).toBe(3);
});

test("the best order is sought with many stops, and is the same however often it stops", () => {
  const looks = Array.from({ length: 30 }, (_, index) =>
    sampleLook(index + 1, {
      talents: [["Ines", "Teo", "Mina"][(index * index) % 3]!],
      changeMinutes: 5 + ((index * 7) % 20),
      shootingMinutes: 10 + ((index * 11) % 25),
    }),
  );
  const search = lookOrderStepwise(sampleDay(looks), { tries: 2000, beginnings: 20_000, seed: 1, nearestWidth: 0 });
  let stops = 0;
  let step = search.next();
  for (; step.done !== true; step = search.next()) stops++;
  expect(stops).toBeGreaterThan(20);
  const effort = { tries: 2000, beginnings: 20_000, seed: 1, nearestWidth: 0 };
  expect(step.value).toEqual(lookOrder(sampleDay(looks), effort));
});
