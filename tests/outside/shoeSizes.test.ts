import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { footLengthMm } from "../../src/domain/prep/footLengthMm";
import type { ShoeSystem } from "../../src/domain/prep/shoeSystem";
import { sizeOfFoot } from "../../src/domain/prep/sizeOfFoot";
import restated from "./shoeSizes.json";

// The relations and the table were read in different places and differ by a third of a size at most, so half a size is the bar.

const SYSTEMS: readonly ShoeSystem[] = ["Mondopoint", "EU", "UK", "US men", "US women"];
const rows = restated.rows.map((row) => [row[0]!, row] as const);

function converted(size: number, from: ShoeSystem, to: ShoeSystem): number {
  const foot = footLengthMm(size, from, "size");
  if (!foot.ok) throw new Error(`${size} ${from} is in the table and was refused`);
  return sizeOfFoot(foot.value, to);
}

test.each(rows)("a foot of %d mm: every size of its row from its length, within half a size", (mm, row) => {
  SYSTEMS.forEach((system, column) => {
    const size = converted(mm, "Mondopoint", system);
    expect(Math.abs(size - row[column]!)).toBeLessThanOrEqual(0.5);
    if (system === "EU" || system === "Mondopoint") expect(size).toBe(row[column]);
  });
});

test.each(rows)("a foot of %d mm: every size of its row from every other, within half a size or 5 mm", (_mm, row) => {
  SYSTEMS.forEach((from, fromColumn) => {
    SYSTEMS.forEach((to, toColumn) => {
      const off = Math.abs(converted(row[fromColumn]!, from, to) - row[toColumn]!);
      expect(off).toBeLessThanOrEqual(to === "Mondopoint" ? 5 : 0.5);
    });
  });
});

test("of the table's British and American sizes, 20 rows in 23 are met exactly", () => {
  for (const [column, system] of SYSTEMS.entries()) {
    if (column < 2) continue;
    const exact = restated.rows.filter((row) => sizeOfFoot(row[0]!, system) === row[column]);
    expect(exact.length).toBeGreaterThanOrEqual(20);
  }
});

test("the relations: EU 1.5 x cm + 2, UK 3 x in - 23, US men UK + 1, US women 3 x in - 21", () => {
  for (const [size, system] of [
    [1.5 * 24 + 2, "EU"],
    [(3 * 240) / 25.4 - 23, "UK"],
    [(3 * 240) / 25.4 - 22, "US men"],
    [(3 * 240) / 25.4 - 21, "US women"],
  ] as const) {
    const foot = footLengthMm(size, system, "size");
    expect(foot.ok && foot.value).toBeCloseTo(240, 9);
  }
});

test("sizes beyond the ends of the table are refused", () => {
  for (const [column, system] of SYSTEMS.entries()) {
    const [least, most] = [restated.rows[0]![column]!, restated.rows.at(-1)![column]!];
    for (const size of [least, most]) expect(footLengthMm(size, system, "size").ok).toBe(true);
    for (const size of [least - 0.5, most + 0.5, NaN]) expect(footLengthMm(size, system, "size").ok).toBe(false);
  }
});

const reference = join(__dirname, "../../../shared/reference/shoe_sizes.json");
(existsSync(reference) ? test : test.skip)(
  "the restated table is the collected one (skipped where the reference folder is absent)",
  () => {
    const collected = JSON.parse(readFileSync(reference, "utf8")) as { table2_style: typeof restated };
    const { columns, rows: table } = restated;
    expect(collected.table2_style).toMatchObject({ columns, rows: table });
  },
);
