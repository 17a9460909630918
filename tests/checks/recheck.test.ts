import fc from "fast-check";
import { allRules } from "../../src/checks/allRules";
import type { CheckedWorkbook } from "../../src/checks/checkedWorkbook";
import type { Finding } from "../../src/checks/finding";
import { recheck } from "../../src/checks/recheck";
import { runChecks } from "../../src/checks/runChecks";
import { startChecks } from "../../src/checks/startChecks";
import type { Cell } from "../../src/sheet/cell";
import { arbitraryEdits, arbitrarySample } from "./arbitraryWorkbook";
import { day } from "./day";
import { AS_OF } from "./testRule";
import { workbookOf } from "./workbookOf";

/** The workbook as read anew after typing: no array is shared with the earlier reading, rows come to be filled or blank. */
function typeInto(workbook: CheckedWorkbook, edits: readonly (readonly [number, Cell])[]): CheckedWorkbook {
  const tables = workbook.tables.map((table) => ({
    ...table,
    cells: table.cells.map((row) => [...row]),
    formulas: table.formulas.map((row) => [...row]),
  }));
  const places = tables.flatMap((table, at) =>
    table.cells.slice(1).flatMap((row, index) => row.map((_, column) => [at, index + 1, column] as const)),
  );
  if (places.length > 0) {
    for (const [pick, typed] of edits) {
      const [at, row, column] = places[pick % places.length]!;
      tables[at]!.cells[row]![column] = typed;
      tables[at]!.formulas[row]![column] = null;
    }
  }
  const isFilled = (row: readonly unknown[]): boolean => row.some((cell) => cell !== null && cell !== "");
  return {
    ...workbook,
    tables: tables.map((table) => ({
      ...table,
      dataRows: table.cells.flatMap((row, index) => (index > 0 && isFilled(row) ? [index] : [])),
    })),
  };
}

test("a whole check never throws, whatever the cells hold, and its findings stand in order", () => {
  fc.assert(
    fc.property(arbitrarySample, (sample) => {
      const workbook = workbookOf(sample);
      const findings = runChecks(workbook, { asOf: AS_OF });
      const sheets = workbook.tables.map(({ sheetId }) => sheetId);
      const key = ({ at, ruleId, messageId }: Finding): string =>
        [sheets.indexOf(at.sheetId), at.row, at.column].map((part) => String(part).padStart(4, "0")).join(" ") +
        ruleId +
        messageId;
      const keys = findings.map(key);
      expect(keys).toEqual([...keys].sort());
      expect(findings.flatMap(missingData)).toEqual([]);
    }),
    { numRuns: 1000 },
  );
});

test("a check again after typing finds what a whole check finds", () => {
  fc.assert(
    fc.property(arbitrarySample, fc.array(arbitraryEdits, { minLength: 1, maxLength: 4 }), (sample, steps) => {
      let workbook = workbookOf(sample);
      let run = startChecks(workbook, { asOf: AS_OF });
      for (const edits of steps) {
        workbook = typeInto(workbook, edits);
        run = recheck(run, workbook);
        expect(run.findings).toEqual(runChecks(workbook, { asOf: AS_OF }));
      }
    }),
    { numRuns: 200 },
  );
});

test("a check again after a table went, came or moved finds what a whole check finds", () => {
  fc.assert(
    fc.property(arbitrarySample, fc.nat(), fc.nat({ max: 3 }), (sample, pick, rows) => {
      const whole = workbookOf(sample);
      if (whole.tables.length === 0) return;
      const at = pick % whole.tables.length;
      const without = { ...whole, tables: whole.tables.filter((_, index) => index !== at) };
      const moved = {
        ...whole,
        tables: whole.tables.map((table, index) =>
          index === at ? { ...table, firstRow: table.firstRow + rows } : table,
        ),
      };
      const options = { asOf: AS_OF };
      expect(recheck(startChecks(whole, options), without).findings).toEqual(runChecks(without, options));
      expect(recheck(startChecks(without, options), whole).findings).toEqual(runChecks(whole, options));
      expect(recheck(startChecks(whole, options), moved).findings).toEqual(runChecks(moved, options));
    }),
  );
});

test("a rule that consults other rows looks again when one of those changes", () => {
  const pieces = {
    pieces: [
      ["Piece", "Out", "Due", "Terms"],
      ["P1", AS_OF, AS_OF + 7, "7 days"],
      ["P2", AS_OF, null, "7 days"],
    ],
  };
  const typed = workbookOf({ tables: pieces });
  const computed = workbookOf({ tables: pieces, formulas: { "pieces!C2": "=TACK.DUE([@Out],[@Terms])" } });
  const run = recheck(startChecks(typed, { asOf: AS_OF }), computed);
  expect(run.findings).toEqual(runChecks(computed, { asOf: AS_OF }));
  expect(run.findings.map(({ suggestions }) => suggestions[0]?.edits[0]?.formula)).toEqual([
    "=TACK.DUE([@Out],[@Terms])",
  ]);
});

test("a check again after the people, the closed days or the call changed finds what a whole check finds", () => {
  const sample = (dressers: Cell, closed: Cell, call: Cell) =>
    workbookOf({
      tables: {
        pieces: [
          ["Piece", "Lender", "Out", "Due", "Look", "Terms"],
          ["P1", "Corbel", AS_OF, AS_OF + 6, "1, 2", null],
          ["P2", "Corbel", AS_OF, null, null, "7 days"],
        ],
        looks: [
          ["Look", "Talent", "Change", "Shooting"],
          [1, "Ana", 20, 30],
          [2, "Bo", 20, 30],
        ],
      },
      beside: {
        People: {
          table: "People",
          rows: [
            ["What", "How many"],
            ["dressers", dressers],
          ],
        },
        Closed: { table: "ClosedDays", rows: [["Closed"], [closed]] },
        Day: {
          rows: [
            ["Call", call],
            ["Wrap", "10:10"],
          ],
        },
      },
    });
  const cell = (...cells: readonly Cell[]) => fc.constantFrom(...cells);
  const state = fc.tuple(cell(1, 2, "?"), cell(null, AS_OF + 6, AS_OF + 1), cell(null, "09:00", "08:00"));
  fc.assert(
    fc.property(state, fc.array(state, { minLength: 1, maxLength: 3 }), (first, then) => {
      let run = startChecks(sample(...first), { asOf: AS_OF });
      for (const each of then) {
        run = recheck(run, sample(...each));
        expect(run.findings).toEqual(runChecks(sample(...each), { asOf: AS_OF }));
      }
    }),
  );
  const found = runChecks(sample(1, AS_OF + 6, "09:00"), { asOf: AS_OF }).map(({ ruleId }) => ruleId);
  expect(found).toEqual(expect.arrayContaining(["pieceInTwoLooks", "dueOnClosedDay", "dueMissing", "dayOverWrap"]));
});

test("a row that did not change is not looked at again", () => {
  const pieces = (due: Cell): Cell[][] => [
    ["Piece", "Due"],
    ["P1", "2026-03-05"],
    ["P2", due],
  ];
  let looks = 0;
  const rule = { ...countingRule, check: () => void looks++ };
  const run = startChecks(workbookOf({ tables: { pieces: pieces(null) } }), { asOf: AS_OF, rules: [rule] });
  expect(looks).toBe(2);
  recheck(run, workbookOf({ tables: { pieces: pieces(day("2026-03-09")) } }));
  expect(looks).toBe(3);
});

/** The names of a message that the finding's data leave open. */
function missingData({ ruleId, messageId, data }: Finding): readonly string[] {
  const template = allRules.find(({ id }) => id === ruleId)?.messages[messageId] ?? "{{message}}";
  const names = [...template.matchAll(/\{\{(\w+)\}\}/g)].map(([, name]) => name!);
  return names.filter((name) => data[name] === undefined).map((name) => `${ruleId}.${messageId}: ${name}`);
}

const countingRule = {
  id: "counting",
  about: "",
  why: "",
  severity: "note",
  fixable: false,
  messages: {},
  tables: ["pieces"],
  scope: "row",
  needs: [],
} as const;
