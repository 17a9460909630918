import fc from "fast-check";
import { allRules } from "../../src/checks/allRules";
import type { CheckedWorkbook } from "../../src/checks/checkedWorkbook";
import type { Rule } from "../../src/checks/rule";
import { runChecks } from "../../src/checks/runChecks";
import { arbitrarySample } from "./arbitraryWorkbook";
import { AS_OF } from "./testRule";
import { workbookOf } from "./workbookOf";

/** The workbook, and the fields that are asked of its tables, by kind of table. */
function watched(workbook: CheckedWorkbook): { workbook: CheckedWorkbook; asked: Map<string, Set<string>> } {
  const asked = new Map<string, Set<string>>();
  const tables = workbook.tables.map((table) => {
    const ofKind = asked.get(table.kind) ?? new Set<string>();
    asked.set(table.kind, ofKind);
    const columnOf = new Proxy(table.columnOf, {
      get: (columns, field) => {
        ofKind.add(String(field));
        return columns[String(field)];
      },
    });
    return { ...table, columnOf };
  });
  return { workbook: { ...workbook, tables }, asked };
}

const declaring = allRules.filter(({ reads }) => reads !== undefined);

test("rules that say what they read are among them all", () => {
  expect(declaring.length).toBeGreaterThan(0);
});

test.each(declaring.map((rule) => [rule.id, rule] as const))(
  "%s reads no field of a table that it does not say it reads",
  (_, rule: Rule) => {
    fc.assert(
      fc.property(arbitrarySample, (sample) => {
        const { workbook, asked } = watched(workbookOf(sample));
        runChecks(workbook, { asOf: AS_OF, rules: [rule] });
        for (const [part, fields] of Object.entries(rule.reads ?? {})) {
          // A rule over rows is run for every row that changed, whatever it reads there.
          if (rule.scope === "row" || rule.scope === "cell") continue;
          const others = [...(asked.get(part) ?? [])].filter((field) => !fields.includes(field));
          expect(others).toEqual([]);
        }
      }),
    );
  },
);
