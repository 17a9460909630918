import fc from "fast-check";
import { runChecks } from "../../src/checks/runChecks";
import { due } from "../../src/functions/bindings/due";
import type { Cell } from "../../src/sheet/cell";
import { applyRepair } from "./applyRepair";
import { columnNumber } from "./columnNumber";
import { day } from "./day";
import { AS_OF } from "./testRule";
import { type Sample, workbookOf } from "./workbookOf";

/** What the host computes for a formula that the check suggests, by the very function that it calls. */
function compute(formula: string, sample: Sample): number {
  const inner = /^=TACK\.DUE\((.*)\)$/.exec(formula)![1]!;
  const parts = inner.split(",").map((part): Cell => {
    if (part === "") return null;
    if (part.startsWith('"')) return part.slice(1, -1);
    const [, kind, column, row] = /^(?:'(\w+)'!)?\$?([A-Z]+)\$?(\d+)$/.exec(part)!;
    const rows = sample.tables[(kind ?? "pieces") as "pieces"]!;
    return rows[Number(row) - 1]![columnNumber(column!)]!;
  });
  const [out, terms, shoot, closed, weekend] = parts;
  return Number(due(out, terms, shoot ?? null, closed as never, weekend ?? null));
}

const terms = fc.constantFrom(
  "7 days",
  "3 working days",
  "2 weeks",
  "1 month",
  "2 days after shoot",
  "next working day",
  "Friday after wrap",
);
const closedWeekdays = fc.constantFrom(null, "Sun", "Sun, Mon", "Sat, Sun", "Fri-Sun", "none", "Mon");

test("the suggested formula gives a due day, and one on which the lender is open", () => {
  fc.assert(
    fc.property(
      terms,
      fc.boolean(),
      closedWeekdays,
      fc.integer({ min: 0, max: 30 }),
      (typed, isLenders, closed, days) => {
        const sample: Sample = {
          tables: {
            pieces: [
              ["Piece", "Lender", "Out", "Due", "Terms", "Shoot"],
              ["P1", "Maison Orla", AS_OF + days, null, isLenders ? null : typed, AS_OF + days + 3],
            ],
            lenders: [
              ["Lender", "Terms", "Closed weekdays"],
              ["Maison Orla", isLenders ? typed : null, closed],
            ],
          },
        };
        const workbook = workbookOf(sample);
        const [finding, ...others] = runChecks(workbook, { asOf: AS_OF });
        expect([finding?.ruleId, others]).toEqual(["dueMissing", []]);
        const suggestion = finding!.suggestions[0]!;
        const result = compute(suggestion.edits[0]!.formula!, sample);
        expect(result).toBeGreaterThan(AS_OF + days);
        expect(runChecks(applyRepair(workbook, suggestion, [result]), { asOf: AS_OF })).toEqual([]);
      },
    ),
  );
});

test("the closed days that the workbook lists are passed on, in their place", () => {
  const formula = (closedWeekdays: Cell) =>
    runChecks(
      workbookOf({
        tables: {
          pieces: [
            ["Piece", "Lender", "Out", "Due", "Terms"],
            ["P1", "Maison Orla", day("2026-03-02"), null, "7 days"],
          ],
          lenders: [
            ["Lender", "Closed weekdays"],
            ["Maison Orla", closedWeekdays],
          ],
        },
        beside: { Job: { table: "ClosedDays", rows: [["Bank holidays"], [day("2026-04-03")]] } },
      }),
      { asOf: AS_OF },
    ).map(({ suggestions }) => suggestions[0]?.edits[0]?.formula);
  expect(formula(null)).toEqual(["=TACK.DUE(C2,E2,,ClosedDays[Bank holidays])"]);
  expect(formula("Sun")).toEqual(['=TACK.DUE(C2,E2,,ClosedDays[Bank holidays],"0000001")']);
});

test("a sheet name with a quote in it is written as the formula language wants it", () => {
  const workbook = workbookOf({
    tables: {
      pieces: [
        ["Piece", "Lender", "Out", "Due"],
        ["P1", "Maison Orla", day("2026-03-02"), null],
      ],
      lenders: [
        ["Lender", "Terms"],
        ["Maison Orla", "7 days"],
      ],
    },
  });
  const renamed = {
    ...workbook,
    tables: workbook.tables.map((table) =>
      table.kind === "lenders" ? { ...table, sheetName: "Mo's lenders" } : table,
    ),
  };
  const [finding] = runChecks(renamed, { asOf: AS_OF });
  expect(finding?.suggestions[0]?.edits[0]?.formula).toBe("=TACK.DUE(C2,'Mo''s lenders'!$B$2)");
});
