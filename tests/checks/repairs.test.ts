import fc from "fast-check";
import type { Finding, Repair } from "../../src/checks/finding";
import { runChecks } from "../../src/checks/runChecks";
import { applyRepair } from "./applyRepair";
import { arbitrarySample } from "./arbitraryWorkbook";
import { AS_OF } from "./testRule";
import { workbookOf } from "./workbookOf";

const sameFinding = (finding: Finding) => (other: Finding) =>
  other.ruleId === finding.ruleId &&
  other.at.sheetId === finding.at.sheetId &&
  other.at.row === finding.at.row &&
  other.at.column === finding.at.column;

test("every fix can be written as it is offered, and its finding is gone then", () => {
  fc.assert(
    fc.property(arbitrarySample, (sample) => {
      const workbook = workbookOf(sample);
      for (const finding of runChecks(workbook, { asOf: AS_OF })) {
        if (finding.fix === undefined) continue;
        const left = runChecks(applyRepair(workbook, finding.fix), { asOf: AS_OF });
        expect(left.filter(sameFinding(finding))).toEqual([]);
      }
    }),
    { numRuns: 150 },
  );
});

test("every suggestion can be written as it is offered", () => {
  fc.assert(
    fc.property(arbitrarySample, (sample) => {
      const workbook = workbookOf(sample);
      const suggestions = runChecks(workbook, { asOf: AS_OF }).flatMap((finding) => finding.suggestions);
      for (const suggestion of suggestions) expect(() => applyRepair(workbook, suggestion)).not.toThrow();
    }),
    { numRuns: 300 },
  );
});

test("all fixes of one check can be written in one step: no two of them write one cell", () => {
  fc.assert(
    fc.property(arbitrarySample, (sample) => {
      const workbook = workbookOf(sample);
      const fixes = runChecks(workbook, { asOf: AS_OF }).flatMap(({ fix }) => (fix === undefined ? [] : [fix]));
      const together: Repair = { label: "All", edits: fixes.flatMap(({ edits }) => edits) };
      expect(() => applyRepair(workbook, together)).not.toThrow();
      const cells = together.edits.map(({ at }) => `${at.sheetId} ${at.row} ${at.column}`);
      expect(cells).toEqual([...new Set(cells)]);
    }),
    { numRuns: 500 },
  );
});

test("a repair never writes over a formula", () => {
  fc.assert(
    fc.property(arbitrarySample, (sample) => {
      const workbook = workbookOf(sample);
      const repairs = runChecks(workbook, { asOf: AS_OF }).flatMap(({ fix, suggestions }) => [
        ...(fix === undefined ? [] : [fix]),
        ...suggestions,
      ]);
      for (const { at } of repairs.flatMap(({ edits }) => edits)) {
        const table = workbook.tables.find(({ sheetId }) => sheetId === at.sheetId)!;
        expect(table.formulas[at.row]?.[at.column] ?? null).toBeNull();
      }
    }),
    { numRuns: 300 },
  );
});
