import fc from "fast-check";
import { dayPlan } from "../../../src/domain/day/dayPlan";
import { smallestCrew } from "../../../src/domain/day/smallestCrew";
import type { PlannedDay } from "../../../src/domain/day/plannedDay";
import { dayMarks } from "../../../src/pane/today/dayMarks";
import { dayRows } from "../../../src/pane/today/dayRows";
import { readLooks } from "../../../src/sheet/readLooks";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

const HEADINGS = ["Look", "Talent", "Change", "Hair and make-up", "Shooting"];

async function planOf(rows: readonly (readonly Cell[])[], crew = smallestCrew): Promise<PlannedDay> {
  const { tables } = await readSheets([{ name: "Looks", rows: [HEADINGS, ...rows] }]);
  const looks = readLooks(tables[0]!);
  if (!looks.ok) throw new Error("the looks cannot be read");
  const plan = dayPlan({ looks: looks.value, call: 9 / 24, crew, changes: new Map() });
  if (!plan.ok) throw new Error("the day cannot be planned");
  return plan.value;
}

/** Minutes from 09:00. */
const minute = (time: number): number => Math.round((time * 24 - 9) * 60);

test("each talent has a row with its steps and waits, and below stand the chair, the dresser and the camera", async () => {
  // By hand. Ana: chair 0-20, dresser 20-30, shot 30-60. Bo: chair 20-30, dresser 30-40, ready and waiting to 60, shot 60-80.
  const rows = dayRows(
    await planOf([
      [1, "Ana", 10, 20, 30],
      [2, "Bo", 10, 10, 20],
    ]),
  );
  expect(
    rows.map(({ name, bars }) => [
      name,
      bars.map(({ kind, from, until, look }) => [kind, minute(from), minute(until), look]),
    ]),
  ).toEqual([
    [
      "Ana",
      [
        ["make-up", 0, 20, "1"],
        ["change", 20, 30, "1"],
        ["shot", 30, 60, "1"],
      ],
    ],
    [
      "Bo",
      [
        ["make-up", 20, 30, "2"],
        ["change", 30, 40, "2"],
        ["wait", 40, 60, "2"],
        ["shot", 60, 80, "2"],
      ],
    ],
    [
      "Chair",
      [
        ["make-up", 0, 20, "1"],
        ["make-up", 20, 30, "2"],
      ],
    ],
    [
      "Dresser",
      [
        ["change", 20, 30, "1"],
        ["change", 30, 40, "2"],
      ],
    ],
    [
      "Camera",
      [
        ["shot", 30, 60, "1"],
        ["shot", 60, 80, "2"],
      ],
    ],
  ]);
  expect(rows[1]?.bars[2]?.said).toBe("look 2 waits for camera, look 1");
});

test("several dressers have a row each, talents of one look a row each, and a look without one a row of its own", async () => {
  const rows = dayRows(
    await planOf(
      [
        [1, "Ana & Bo", 10, 0, 30],
        [2, "Cy", 10, 0, 20],
        [3, null, 10, 0, 20],
      ],
      { ...smallestCrew, dressers: 2 },
    ),
  );
  expect(rows.map(({ name }) => name)).toEqual(["Ana", "Bo", "Cy", "(no talent)", "Dresser 1", "Dresser 2", "Camera"]);
});

test("no row does two things at once, and the bars of a kind add up to the minutes of the sheet", async () => {
  const minutes = fc.integer({ min: 1, max: 60 });
  const row = fc.tuple(fc.constantFrom("Ana", "Bo", "Cy"), minutes, minutes, minutes);
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 6 }), async (looks) => {
      const rows = dayRows(await planOf(looks.map((cells, index) => [index + 1, ...cells])));
      for (const { bars } of rows) {
        bars
          .slice(1)
          .forEach(({ from }, index) => expect(minute(from)).toBeGreaterThanOrEqual(minute(bars[index]!.until)));
      }
      const length = (name: string): number =>
        rows
          .find((each) => each.name === name)!
          .bars.reduce((sum, { from, until }) => sum + minute(until) - minute(from), 0);
      const total = (column: 1 | 2 | 3): number => looks.reduce((sum, cells) => sum + cells[column], 0);
      expect([length("Dresser"), length("Chair"), length("Camera")]).toEqual([total(1), total(2), total(3)]);
    }),
    { numRuns: 50 },
  );
});

test("the picture reaches to the wrap, a wrap before call is the next morning's, and a clock outside the day marks nothing", async () => {
  const plan = await planOf([[1, "Ana", 10, 20, 30]]);
  expect(dayMarks(plan, 18 / 24, 12 / 24)).toEqual({ from: 9 / 24, until: 18 / 24, wrap: 18 / 24, now: 12 / 24 });
  expect(dayMarks(plan, 1 / 24, 0.5 / 24)).toEqual({ from: 9 / 24, until: 25 / 24, wrap: 25 / 24, now: 24.5 / 24 });
  expect(dayMarks(plan, null, 20 / 24)).toEqual({ from: 9 / 24, until: 10 / 24, wrap: null, now: null });
});
