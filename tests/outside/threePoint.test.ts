import { chanceByWrap } from "../../src/domain/day/chanceByWrap";
import { pertQuantile } from "../../src/domain/day/pertQuantile";
import { sampleDay, sampleLook } from "../domain/day/sampleLook";
import example from "./threePointExample.json";

const estimates = Object.values(example.path).map(([low, likely, high]) => ({
  low: low!,
  likely: likely!,
  high: high!,
}));

test("the restated estimates give the printed mean and variance by the published formulas", () => {
  const mean = estimates.reduce((sum, { low, likely, high }) => sum + (low + 4 * likely + high) / 6, 0);
  const variance = estimates.reduce((sum, { low, high }) => sum + ((high - low) / 6) ** 2, 0);
  expect(mean).toBeCloseTo(example.mean, 10);
  expect(variance).toBeCloseTo(example.variance, 10);
});

test("the durations drawn have the printed mean", () => {
  const draws = 10_000;
  const means = estimates.map((estimate) => {
    const at = pertQuantile(estimate);
    return (
      Array.from({ length: draws }, (_, run) => at((run + 0.5) / draws)).reduce((sum, each) => sum + each, 0) / draws
    );
  });
  expect(means.reduce((sum, each) => sum + each, 0)).toBeCloseTo(example.mean, 2);
});

test("the chance of the deadline is near the one printed, which takes the path's end for normal and ((high - low) / 6)^2 for each variance", () => {
  // One talent and no shots of any length: the changes follow each other as the activities of the path do.
  const looks = estimates.map((changeRange, index) =>
    sampleLook(index + 1, { talents: ["Mina"], changeMinutes: changeRange.likely, changeRange }),
  );
  const chance = chanceByWrap(sampleDay(looks), 9 / 24 + example.deadline / 1440, 20_000, 1);
  expect(chance.ok && Math.abs(chance.value - example.chanceByNormal)).toBeLessThan(0.02);
});
