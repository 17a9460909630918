import type { Finding } from "../../src/checks/finding";
import type { Rule } from "../../src/checks/rule";
import { runChecks } from "../../src/checks/runChecks";
import { applyRepair } from "./applyRepair";
import { columnLetters } from "./columnLetters";
import { day } from "./day";
import { type Sample, workbookOf } from "./workbookOf";

/** The day on which every example is checked, unless it says otherwise: a Thursday. */
export const AS_OF = day("2026-03-05");

interface CleanCase extends Sample {
  readonly title: string;
  readonly asOf?: number;
}

interface ExpectedFinding {
  /** "pieces!B2". */
  readonly at: string;
  readonly messageId: string;
  readonly data?: Readonly<Record<string, string | number>>;
  /** What the fix writes: "pieces!B2" to the value or the formula. Left out where there must be no fix. */
  readonly fix?: Readonly<Record<string, unknown>>;
  /** What each suggestion writes. Left out where there must be none. */
  readonly suggestions?: readonly Readonly<Record<string, unknown>>[];
}

interface FindingCase extends CleanCase {
  readonly expect: readonly ExpectedFinding[];
}

interface RuleCases {
  readonly clean: readonly CleanCase[];
  readonly findings: readonly FindingCase[];
}

/** Tests one rule by its tables of clean and finding examples, and the tables themselves. */
export function testRule(rule: Rule, cases: RuleCases): void {
  const run = (sample: CleanCase): readonly Finding[] =>
    runChecks(workbookOf(sample), { asOf: sample.asOf ?? AS_OF, rules: [rule] });

  describe(`${rule.id} finds nothing`, () => {
    test.each(cases.clean.map((sample) => [sample.title, sample] as const))("in %s", (_, sample) => {
      expect(run(sample).map((finding) => `${place(finding.at)} ${finding.message}`)).toEqual([]);
    });
  });

  describe(`${rule.id} reports`, () => {
    test.each(cases.findings.map((sample) => [sample.title, sample] as const))("%s", (_, sample) => {
      const found = run(sample);
      expect(found.map((finding) => outline(finding))).toEqual(
        sample.expect.map(({ at, messageId, fix, suggestions }) => ({
          at,
          messageId,
          fix,
          suggestions: suggestions ?? [],
        })),
      );
      found.forEach((finding, index) => {
        expect(finding.data).toMatchObject(sample.expect[index]?.data ?? {});
        expect(finding.message).not.toMatch(/\{\{|undefined|NaN|null/);
      });
    });

    test.each(cases.findings.map((sample) => [sample.title, sample] as const))(
      "%s, and no longer once it is fixed",
      (_, sample) => {
        const workbook = workbookOf(sample);
        for (const finding of run(sample)) {
          if (finding.fix === undefined) continue;
          const mended = applyRepair(workbook, finding.fix);
          const left = runChecks(mended, { asOf: sample.asOf ?? AS_OF, rules: [rule] });
          expect(left.filter(({ at }) => place(at) === place(finding.at))).toEqual([]);
        }
      },
    );
  });

  describe(`the examples of ${rule.id}`, () => {
    const found = cases.findings.flatMap(run);
    test("are at least as many clean as not", () => {
      expect(cases.findings.length).toBeGreaterThan(0);
      expect(cases.clean.length).toBeGreaterThanOrEqual(cases.findings.length);
    });
    test("use every message", () => {
      expect([...new Set(found.map(({ messageId }) => messageId))].sort()).toEqual(Object.keys(rule.messages).sort());
    });
    test("carry a fix exactly when the rule says that it has one", () => {
      expect(found.some(({ fix }) => fix !== undefined)).toBe(rule.fixable);
    });
    test("fill every name of the messages and give no data that no message uses", () => {
      for (const finding of found) {
        const names = [...(rule.messages[finding.messageId] ?? "").matchAll(/\{\{(\w+)\}\}/g)].map(([, name]) => name!);
        expect(Object.keys(finding.data).sort()).toEqual([...new Set(names)].sort());
      }
    });
  });
}

function outline({ at, messageId, fix, suggestions }: Finding): object {
  return {
    at: place(at),
    messageId,
    fix: fix === undefined ? undefined : written(fix.edits),
    suggestions: suggestions.map(({ edits }) => written(edits)),
  };
}

function written(edits: NonNullable<Finding["fix"]>["edits"]): object {
  return Object.fromEntries(edits.map(({ at, value, formula }) => [place(at), formula ?? value]));
}

function place({ sheetId, row, column }: Finding["at"]): string {
  return `${sheetId}!${columnLetters(column)}${row + 1}`;
}
