import fc from "fast-check";
import { collectCells } from "../../../src/bench/port/collectCells";

test("the used range is the smallest block that holds every cell put in, in whatever order", () => {
  const cells = collectCells();
  cells.put(5, 3, "b", null);
  cells.put(2, 4, 7, "=3+4");
  cells.put(9, 9, null, null);
  expect(cells.usedRange()).toEqual({
    firstRow: 2,
    firstColumn: 3,
    values: [
      [null, 7],
      [null, null],
      [null, null],
      ["b", null],
    ],
    formulas: [
      [null, "=3+4"],
      [null, null],
      [null, null],
      [null, null],
    ],
  });
});

test("without any cell there is no range", () => {
  expect(collectCells().usedRange()).toEqual({ firstRow: 0, firstColumn: 0, values: [], formulas: [] });
});

test("a formula whose result is empty is a cell, and what holds nothing is none", () => {
  const cells = collectCells();
  cells.put(1, 1, null, '=""');
  cells.put(2, 2, null, null);
  expect([cells.has(1, 1), cells.has(2, 2), cells.has(0, 0)]).toEqual([true, false, false]);
});

test("every cell comes back from where it was put, and the others are blank", () => {
  const cell = fc.record({
    row: fc.nat(12),
    column: fc.nat(12),
    value: fc.constantFrom("x", 0, false, 3, null),
    formula: fc.constantFrom("=1", null),
  });
  fc.assert(
    fc.property(fc.array(cell), (put) => {
      const cells = collectCells();
      const plain = new Map<string, (typeof put)[number]>();
      for (const each of put) {
        cells.put(each.row, each.column, each.value, each.formula);
        if (each.value !== null || each.formula !== null) plain.set(`${each.row} ${each.column}`, each);
      }
      const { firstRow, firstColumn, values, formulas } = cells.usedRange();
      for (let row = 0; row <= 12; row++) {
        for (let column = 0; column <= 12; column++) {
          const held = plain.get(`${row} ${column}`);
          expect(values[row - firstRow]?.[column - firstColumn] ?? null).toBe(held?.value ?? null);
          expect(formulas[row - firstRow]?.[column - firstColumn] ?? null).toBe(held?.formula ?? null);
          expect(cells.has(row, column)).toBe(held !== undefined);
        }
      }
    }),
  );
});
