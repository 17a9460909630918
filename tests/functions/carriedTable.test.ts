import { sayProblem } from "../../src/domain/wording";
import { carriedTable } from "../../src/functions/carriedTable";

const rows = [
  ["Piece", "Weight"],
  ["A", 1],
];

test("the unit is the kilogram when left out", () => {
  for (const unit of [null, undefined, "", 0]) {
    const carried = carriedTable(rows, unit, null);
    expect(carried.ok && carried.value.gramsPerUnit).toBe(1000);
  }
  const ounces = carriedTable(rows, "oz", null);
  expect(ounces.ok && ounces.value.gramsPerUnit).toBe(28.349523125);
});

test("a unit that is none and a table without anything to weigh by are named", () => {
  const said = (...args: Parameters<typeof carriedTable>): string => {
    const carried = carriedTable(...args);
    return carried.ok ? "" : sayProblem(carried.problem);
  };
  expect(said(rows, "stone", null)).toContain('unit: "stone"');
  expect(
    said(
      [
        ["Piece", "Lender"],
        ["A", "Maison Orla"],
      ],
      null,
      null,
    ),
  ).toContain("Weight or Kind or Description");
});

test("two columns that could both keep pieces together matter only to whoever asks for them", () => {
  const twice = [
    ["Piece", "Weight", "Together", "Pack with"],
    ["A", 1, "x", "y"],
  ];
  expect(carriedTable(twice, null, null).ok).toBe(true);
  expect(carriedTable(twice, null, null, ["together"]).ok).toBe(false);
});
