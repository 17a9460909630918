import { readIsOutside } from "../../src/sheet/readIsOutside";
import { readShoes } from "../../src/sheet/readShoes";
import { readTable } from "../../src/sheet/readTable";

test("reads shoes with the system their size names, else the one given", () => {
  const cells = [
    ["Shoe name", "Shoe size", "Where", "Pairs"],
    ["Pumps", 38, "Studio", ""],
    ["Boots", "Mondo 270", "ext.", 2],
    ["Mules", "", 0, 0],
    ["Clogs", 60, "moon", "two pairs"],
  ];
  const table = readTable({ cells, kind: "shoes", needs: ["shoes", "size", "where"] });
  if (!table.ok) throw new Error(table.problem.reason);
  const [pumps, boots, mules, clogs] = readShoes(table.value, "EU");
  expect(pumps).toMatchObject({ name: "Pumps", isOutside: false, pairs: null });
  expect(pumps!.footMm).toBeCloseTo(240, 9);
  expect(boots).toMatchObject({ footMm: 270, isOutside: true, pairs: 2 });
  expect(mules).toMatchObject({ footMm: null, isOutside: null, pairs: null, sizeCell: "Shoe size, row 4" });
  expect(clogs).toMatchObject({
    footMm: { reason: "argument-not-usable", facts: { argument: "Shoe size, row 5", given: "60" } },
    isOutside: { reason: "argument-not-usable", facts: { argument: "Where, row 5" } },
    pairs: { reason: "argument-not-usable" },
  });
});

test.each([
  ["Outside", true],
  ["outdoors", true],
  ["EXT.", true],
  ["Extérieur", true],
  ["außen", true],
  ["out", true],
  ["inside and out", true],
  ["Indoors", false],
  ["int", false],
  ["in", false],
  ["Innen", false],
  ["Studio 4", false],
  [null, null],
  [0, null],
])("%j is outside: %j", (raw, expected) => {
  const read = readIsOutside(raw, "Where");
  expect(read.ok && read.value).toBe(expected);
});
