import fc from "fast-check";
import { ownCalls } from "../../../src/pane/columns/ownCalls";
import { areaReference } from "../../../src/pane/functions/areaReference";
import { composeFormula } from "../../../src/pane/functions/composeFormula";
import { evaluateReference } from "../../../src/pane/functions/evaluateReference";
import { functionDocs } from "../../../src/pane/functions/functionDocs";
import { structuredReference } from "../../../src/sheet/structuredReference";
import { withSemicolons } from "../../../src/pane/functions/withSemicolons";
import type { WorkbookSnapshot } from "../../../src/sheet/sheetSnapshot";

test("arguments left out at the end are not written, those in between are stepped over", () => {
  expect(composeFormula("DUE", ["A1", '"7 days"', "", "", "", ""])).toBe('=TACK.DUE(A1,"7 days")');
  expect(composeFormula("DUE", ["A1", "B1", "", "C1:C3", ""])).toBe("=TACK.DUE(A1,B1,,C1:C3)");
});

test.each([
  ['=TACK.DUE(A1,"7 days, or so",,Days[Closed])', '=TACK.DUE(A1;"7 days, or so";;Days[Closed])'],
  ["=TACK.KEEPCOST(120.5,60,0.3)", "=TACK.KEEPCOST(120,5;60;0,3)"],
  ["=TACK.DUE(DATE(2026,3,5),B1)", "=TACK.DUE(DATE(2026;3;5);B1)"],
  ["=TACK.DUE('a, b'!A1,Loans[Out, date])", "=TACK.DUE('a, b'!A1;Loans[Out, date])"],
])("%s is typed %s where a semicolon parts arguments", (formula, typed) => {
  expect(withSemicolons(formula)).toBe(typed);
});

test("every example of a function reads back as that function with its arguments", () => {
  for (const { id, examples } of functionDocs) {
    for (const { formula } of examples) {
      const [call] = ownCalls(formula);
      expect(composeFormula(id, call?.args.map(({ text }) => text) ?? [])).toBe(formula.replace(/,+\)$/, ")"));
    }
  }
});

/** A workbook whose sheet and table headings are these. */
function workbookWith(sheetName: string, heading: string): WorkbookSnapshot {
  const values = [[heading], [7]];
  return {
    name: "Job",
    dateSystem: 1900,
    sheets: [
      {
        sheetId: "s0",
        name: sheetName,
        visible: true,
        isProtected: false,
        firstRow: 0,
        firstColumn: 0,
        values,
        formulas: [[null], [null]],
        tables: [{ name: "T", row: 0, column: 0, rowCount: 2, columnCount: 1 }],
      },
    ],
  };
}

test("a heading of any characters is found by the reference written for it", () => {
  const headings = fc.oneof(fc.string(), fc.stringMatching(/^[A-Za-z '[\]#@£,.-]{1,12}$/));
  fc.assert(
    fc.property(
      headings.filter((text) => text.trim() !== "" && text.trim() === text && !/[\r\n]/.test(text)),
      (heading) => {
        fc.pre(!/^(?:#(?:all|data|headers)|@.*)$/i.test(heading));
        const surroundings = { workbook: workbookWith("S", heading), today: 0, home: null };
        for (const isOwnRow of [true, false]) {
          expect(evaluateReference(structuredReference("T", heading, isOwnRow), surroundings)).toEqual([[7]]);
        }
      },
    ),
  );
});

test("a sheet of any name is found by the reference written for it", () => {
  fc.assert(
    fc.property(
      fc.string({ minLength: 1, maxLength: 31 }).filter((name) => !/[\\/?*[\]:]/.test(name)),
      (name) => {
        const surroundings = { workbook: workbookWith(name, "H"), today: 0, home: null };
        const reference = areaReference(name, { row: 1, column: 0, rowCount: 1, columnCount: 1 });
        expect(evaluateReference(reference, surroundings)).toEqual([[7]]);
      },
    ),
  );
});

test.each([
  ["Loans", { row: 3, column: 0, rowCount: 125, columnCount: 20 }, "Loans!A4:T128"],
  ["My loans", { row: 1, column: 1, rowCount: 1, columnCount: 1 }, "'My loans'!B2"],
  ["Bea's", { row: 0, column: 0, rowCount: 1_048_576, columnCount: 3 }, "'Bea''s'!A:C"],
  ["AB12", { row: 0, column: 0, rowCount: 2, columnCount: 1 }, "'AB12'!A1:A2"],
])("an area of %s is named %j", (name, area, reference) => {
  expect(areaReference(name, area)).toBe(reference);
});
