import fc from "fast-check";
import { shiftedFormula } from "../../../src/bench/save/shiftedFormula";
import { shiftedReference } from "../../../src/bench/save/shiftedReference";
import type { StructureEdit } from "../../../src/bench/save/structureEdit";

const edit = (axis: "row" | "column", kind: "insert" | "remove", from: number, count: number): StructureEdit => ({
  sheetId: "1",
  axis,
  kind,
  from,
  count,
});

test.each([
  ["B2", edit("row", "insert", 1, 2), "B4"],
  ["B2", edit("row", "insert", 2, 2), "B2"],
  ["$B$2:D9", edit("row", "insert", 4, 1), "$B$2:D10"],
  ["B2:D9", edit("row", "remove", 0, 1), "B1:D8"],
  ["B2:D9", edit("row", "remove", 1, 3), "B2:D6"],
  ["B2:D9", edit("row", "remove", 8, 5), "B2:D8"],
  ["B2:D9", edit("row", "remove", 0, 20), null],
  ["A:C", edit("row", "insert", 0, 5), "A:C"],
  ["A:C", edit("column", "insert", 1, 1), "A:D"],
  ["$2:$4", edit("row", "insert", 0, 1), "$3:$5"],
  ["Z9", edit("column", "insert", 0, 1), "AA9"],
])("%s after %o is %s", (reference, how, shifted) => {
  expect(shiftedReference(reference, how)).toBe(shifted);
});

test("putting rows or columns in and taking the same ones out again changes no reference", () => {
  const small = fc.nat({ max: 40 });
  const places = fc.record({
    row: small,
    column: small,
    height: small,
    width: small,
    from: small,
    count: fc.integer({ min: 1, max: 9 }),
  });
  fc.assert(
    fc.property(
      places,
      fc.constantFrom("row" as const, "column" as const),
      ({ row, column, height, width, from, count }, axis) => {
        const letters = (index: number) =>
          (index < 26 ? "" : String.fromCharCode(64 + Math.floor(index / 26))) + String.fromCharCode(65 + (index % 26));
        const reference = `${letters(column)}${row + 1}:$${letters(column + width)}$${row + height + 1}`;
        const there = shiftedReference(reference, edit(axis, "insert", from, count));
        return there !== null && shiftedReference(there, edit(axis, "remove", from, count)) === reference;
      },
    ),
  );
});

test("a formula moves with the sheet it points at, and with no other", () => {
  const how = edit("row", "insert", 3, 2);
  expect(shiftedFormula("A5+'My pull'!B6&\"A5\"", how, "Totals", "My pull")).toBe("A5+'My pull'!B8&\"A5\"");
  expect(shiftedFormula("A5+'My pull'!B6", how, "My pull", "My pull")).toBe("A7+'My pull'!B8");
  expect(shiftedFormula("SUM(Loans[Qty])+LOG10(A9)", how, "Totals", "Totals")).toBe("SUM(Loans[Qty])+LOG10(A11)");
});

test("a formula whose cell was taken out says so", () => {
  expect(shiftedFormula("A5*2", edit("row", "remove", 4, 1), "Loans", "Loans")).toBe("#REF!*2");
});
