import fc from "fast-check";
import { carried } from "../../../src/functions/bindings/carried";
import { liftindex } from "../../../src/functions/bindings/liftindex";
import { carryingToday } from "../../../src/pane/today/carryingToday";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

// Thursday 2026-03-05.
const ASOF = 46086;
const GRAMS_PER_KG = 1000;
const headings = ["Piece", "Kind", "Lender", "Weight", "Quantity", "Out", "Due", "Back", "Bag"];

async function carryingOf(rows: readonly (readonly Cell[])[], head: readonly string[] = headings) {
  const read = await readSheets([{ name: "Loans", rows: [head, ...rows] }]);
  return carryingToday(pieceTables(read.tables), ASOF);
}

test("what is late goes back with what is due on the day, then what is due on the next day that has any", async () => {
  const groups = await carryingOf([
    ["a", "coat", "Ado", "1.2 kg", 1, ASOF - 9, ASOF - 2, null, null],
    ["b", "dress", "Orla", "400 g", 2, ASOF - 9, ASOF, null, null],
    ["c", "dress", "Orla", "500 g", 1, ASOF - 9, ASOF + 3, null, null],
    ["d", "dress", "Orla", "900 g", 1, ASOF - 9, ASOF + 4, null, null],
    ["e", "dress", "Orla", "900 g", 1, ASOF - 9, ASOF, ASOF - 1, null],
  ]);
  expect(
    groups?.map(({ day, pieces, weighedGrams, estimatedGrams }) => [day, pieces, weighedGrams, estimatedGrams]),
  ).toEqual([
    [ASOF, 3, 2000, 0],
    [ASOF + 3, 1, 500, 0],
  ]);
  expect(groups?.[0]?.lenders.map(({ name, weighedGrams }) => [name, weighedGrams])).toEqual([
    ["Ado", 1200],
    ["Orla", 800],
  ]);
  expect(groups?.[0]?.bags).toBeNull();
});

test("what is estimated by kind is told apart from what was weighed, and what cannot be weighed is listed", async () => {
  const groups = await carryingOf([
    ["a", "coat", "Ado", "1.2 kg", 1, ASOF - 9, ASOF, null, null],
    ["b", "coat", "Ado", null, 1, ASOF - 9, ASOF, null, null],
    ["c", "gizmo", "Ado", null, 1, ASOF - 9, ASOF, null, null],
  ]);
  expect(groups?.[0]).toMatchObject({ pieces: 3, weighedGrams: 1200 });
  expect(groups?.[0]?.estimatedGrams).toBe(carried([["Kind"], ["coat"]], "g"));
  expect(groups?.[0]?.untold).toHaveLength(1);
  expect(groups?.[0]?.untold[0]).toMatchObject({ name: "c", at: { row: 3, column: 1 } });
  expect(groups?.[0]?.untold[0]?.sentence).toContain("Kind B4");
});

test("bags stand apart with the caution each calls for, and what is in no bag comes last and has none", async () => {
  const groups = await carryingOf([
    ["a", "coat", "Ado", "30 kg", 1, ASOF - 9, ASOF, null, null],
    ["b", "coat", "Ado", "16 kg", 1, ASOF - 9, ASOF, null, "Blue"],
    ["c", "coat", "Orla", "14 kg", 1, ASOF - 9, ASOF, null, "blue"],
    ["d", "coat", "Orla", "3 kg", 1, ASOF - 9, ASOF, null, "Red"],
  ]);
  const bags = groups?.[0]?.bags?.map(({ name, weighedGrams, caution }) => [
    name,
    weighedGrams,
    caution?.isOverPractice,
  ]);
  expect(bags).toEqual([
    ["Blue", 30_000, true],
    ["Red", 3000, undefined],
    ["", 30_000, undefined],
  ]);
});

// The easiest lift of the revised NIOSH equation: 25 cm out, 75 cm up, 25 cm of travel, no turn, 0.2 lifts a minute.
test.each([20.6, 20.8, 22, 23.5])(
  "a load of %d kg calls for a caution where its lifting index is above 1",
  async (kg) => {
    const groups = await carryingOf([["a", "coat", "Ado", `${kg} kg`, 1, ASOF - 9, ASOF, null, null]]);
    const index = liftindex(kg, 25, 75, 25, 0, 0.2, 1, "poor");
    expect(groups?.[0]?.caution === null).toBe(index <= 1);
    if (index > 1) expect(groups?.[0]?.caution?.liftIndex).toBeCloseTo(index, 9);
  },
);

test("the weight of the day is what CARRIED gives for its rows, and lenders and bags add up to it", async () => {
  const row = fc.tuple(
    fc.constant("a"),
    fc.constantFrom("coat", "dress", "shoes"),
    fc.constantFrom("Ado", "Orla", null),
    fc.constantFrom(null, 0.4, "800 g", "2 lb 3 oz"),
    fc.constantFrom(null, 1, 3),
    fc.constant(ASOF - 9),
    fc.constantFrom(ASOF - 1, ASOF),
    fc.constant(null),
    fc.constantFrom("1", "2", null),
  );
  await fc.assert(
    fc.asyncProperty(fc.array(row, { minLength: 1, maxLength: 12 }), async (rows) => {
      const [group] = (await carryingOf(rows)) ?? [];
      const grams = (group?.weighedGrams ?? 0) + (group?.estimatedGrams ?? 0);
      expect(grams).toBeCloseTo(carried([headings, ...rows]) * GRAMS_PER_KG, 6);
      for (const parts of [group?.lenders, group?.bags ?? group?.lenders]) {
        const sum = parts?.reduce((all, part) => all + part.weighedGrams + part.estimatedGrams, 0);
        expect(sum).toBeCloseTo(grams, 6);
      }
    }),
  );
});

test("a table that says no weight, kind or description has nothing to be weighed by", async () => {
  expect(await carryingOf([["a", "Ado", ASOF - 9, ASOF]], ["Piece", "Lender", "Out", "Due"])).toBeNull();
});
