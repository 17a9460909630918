import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { dayPlan } from "../../src/domain/day/dayPlan";
import { smallestCrew } from "../../src/domain/day/smallestCrew";
import { sampleDay, sampleLook } from "../domain/day/sampleLook";
import restated from "./criticalPathExamples.json";

// A day on which nobody is short of hands (a camera for each look, no talent twice, no preparation) is a precedence
// network: looks are its activities, After its arrows. Its earliest starts and finishes are printed in textbooks.

interface Activity {
  readonly d: number;
  readonly pred: readonly string[];
  readonly ES: number;
  readonly EF: number;
}

test.each(restated.examples)("earliest starts and finishes as printed: $source ($provenance)", (example) => {
  const activities = Object.entries(example.activities as unknown as Record<string, Activity>);
  // Shots begin in order, so the activities stand in the order of their printed starts; what comes before stands before.
  const inOrder = activities.sort(
    ([, a], [, b]) => a.ES - b.ES || a.EF - b.EF || Number(a.pred.length) - Number(b.pred.length),
  );
  const looks = inOrder.map(([name, { d, pred }]) => sampleLook(name, { shootingMinutes: d, after: pred }));
  const plan = dayPlan(sampleDay(looks, { crew: { ...smallestCrew, cameras: looks.length } }));
  if (!plan.ok) throw new Error(JSON.stringify(plan.problem));
  const minutes = (fraction: number): number => Math.round((fraction - plan.value.call) * 86400) / 60;
  const timed = plan.value.looks.map(({ look, shootFrom, shootUntil }) => [
    look.label,
    minutes(shootFrom),
    minutes(shootUntil),
  ]);
  expect(timed).toEqual(inOrder.map(([name, { ES, EF }]) => [name, ES, EF]));
  expect(minutes(plan.value.ends)).toBe(example.duration);
});

const reference = join(__dirname, "../../../shared/reference/critical_path_examples.json");
(existsSync(reference) ? test : test.skip)(
  "the restated table is the collected one (skipped where the reference folder is absent)",
  () => {
    const collected = JSON.parse(readFileSync(reference, "utf8")) as typeof restated;
    expect(collected.examples).toMatchObject(restated.examples);
  },
);
