import fc from "fast-check";
import { createExcelPort } from "../../src/excel/excelPort";
import type { Cell } from "../../src/sheet/cell";
import type { CellEdit } from "../../src/sheet/cellEdit";
import { contentAt, createFakeWorkbook, fillCell, formatCell, shownCells } from "./fakeWorkbook";
import { installStrictExcel } from "./strictExcel";
import { strictProbe } from "./strictProbe";

afterEach(() => {
  for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
});

const SIDE = 5;
const text = fc.oneof(
  fc.constantFrom(
    "007",
    "=A1",
    "'tis",
    "TRUE",
    "5 Mar 2026",
    "03/04/26",
    "50%",
    "+44 20",
    "#N/A",
    "Maison Orla",
    "-",
    "@home",
  ),
  fc.string({ minLength: 1, maxLength: 6 }),
);
const value = fc.oneof(
  fc.integer({ min: -9, max: 60_000 }),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.boolean(),
  text,
);
const format = fc.constantFrom("General", "@", "yyyy-mm-dd", "0.00");
const formula = fc.constantFrom("=1+1", "=NA()", '=""');
const place = fc.record({ row: fc.nat(SIDE - 1), column: fc.nat(SIDE - 1) });
const content = fc.oneof(
  value.map((held) => ({ held })),
  formula.map((made) => ({ made })),
  fc.constant({ blank: true }),
);
const cell = fc.record({ at: place, content, format: fc.option(format, { nil: undefined }) });
const distinct = { selector: ({ at }: { at: { row: number; column: number } }) => at.row * SIDE + at.column };
const cells = fc.uniqueArray(cell, distinct);

interface Content {
  readonly held?: number | string | boolean;
  readonly made?: string;
}

/** Everything on the sheet, cell by cell: what it shows, its formula and its format. */
function picture(sheet: Parameters<typeof shownCells>[0]): unknown[] {
  const shown = shownCells(sheet);
  return Array.from({ length: SIDE * SIDE }, (_, index) => {
    const [row, column] = [Math.floor(index / SIDE), index % SIDE];
    const {
      value: held,
      type,
      formula: made,
    } = shown.get(`${row},${column}`) ?? { value: "", type: "Empty", formula: "" };
    return [row, column, held, type, made, contentAt(sheet, row, column).format];
  });
}

test("any step over any sheet writes exactly what it says, and its receipt puts everything back", async () => {
  await fc.assert(
    fc.asyncProperty(cells, cells, async (before, wanted) => {
      const workbook = createFakeWorkbook();
      const probe = strictProbe(workbook, installStrictExcel(workbook, "1.20"));
      const port = createExcelPort();
      const sheetId = await probe.addSheet("Any");
      const sheet = workbook.sheets[0];
      if (sheet === undefined) throw new Error("unreachable");
      for (const { at, content: given, format: pattern } of before) {
        const { held, made } = given as Content;
        fillCell(sheet, at.row, at.column, made ?? (typeof held === "string" ? `'${held}` : (held ?? "")));
        if (pattern !== undefined) formatCell(sheet, at.row, at.column, pattern);
      }
      const read = await port.readSheet(sheetId);
      if (!read.ok) throw new Error("the sheet was not read");
      const { firstRow, firstColumn, values, formulas } = read.value;
      const edits = wanted.map(({ at, content: given, format: numberFormat }): CellEdit => {
        const { held = null, made } = given as Content;
        const formulaNow = formulas[at.row - firstRow]?.[at.column - firstColumn] ?? null;
        return {
          at: { sheetId, ...at },
          expected: values[at.row - firstRow]?.[at.column - firstColumn] ?? null,
          ...(formulaNow === null ? {} : { expectedFormula: formulaNow }),
          value: made === undefined ? (held as Cell) : null,
          ...(made === undefined ? {} : { formula: made }),
          ...(numberFormat === undefined ? {} : { numberFormat }),
        };
      });
      const start = picture(sheet);
      const receipt = await port.write("Any", edits);
      if (!receipt.ok) throw new Error(JSON.stringify(receipt.problem));
      const shown = shownCells(sheet);
      for (const { at, value: written, formula: made, numberFormat } of edits) {
        const now = shown.get(`${at.row},${at.column}`);
        expect(made === undefined ? (now?.value ?? null) : now?.formula).toEqual(made ?? written);
        if (numberFormat !== undefined) expect(contentAt(sheet, at.row, at.column).format).toBe(numberFormat);
      }
      const restored = await port.restore(receipt.value);
      if (!restored.ok) throw new Error(JSON.stringify(restored.problem));
      expect(picture(sheet)).toEqual(start);
    }),
    { numRuns: 300 },
  );
});
