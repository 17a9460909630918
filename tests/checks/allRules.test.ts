import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { allRules } from "../../src/checks/allRules";

const RULES = join(__dirname, "../../src/checks/rules");
const files = readdirSync(RULES).map((file) => file.replace(/\.ts$/, ""));

test("every file of the rules folder is in the list, once, and under its own name", () => {
  expect(allRules.map(({ id }) => id).sort()).toEqual([...files].sort());
});

test("at least fourteen rules", () => {
  expect(allRules.length).toBeGreaterThanOrEqual(14);
});

describe.each(allRules.map((rule) => [rule.id, rule] as const))("%s", (id, rule) => {
  const source = readFileSync(join(RULES, `${id}.ts`), "utf8");

  test("is exported under its id and has its examples beside it", () => {
    expect(source).toContain(`export const ${id} = defineRule({`);
    expect(existsSync(join(__dirname, "rules", `${id}.test.ts`))).toBe(true);
    expect(readFileSync(join(__dirname, "rules", `${id}.test.ts`), "utf8")).toContain(`testRule(${id}, {`);
  });

  test("says what it looks for and why it matters, in one sentence each", () => {
    for (const sentence of [rule.about, rule.why]) {
      expect(sentence).toMatch(/^[A-Z][^.]*\.$/);
      expect(sentence.length).toBeLessThanOrEqual(160);
    }
  });

  test("has messages of one or two sentences that end as sentences do", () => {
    expect(Object.keys(rule.messages).length).toBeGreaterThan(0);
    for (const message of Object.values(rule.messages)) {
      expect(message).toMatch(/(?:[.!]|\{\{sentence\}\})$/);
      expect(message.replace(/\{\{\w+\}\}/g, "x").match(/[.!](?= |$)/g)?.length ?? 1).toBeLessThanOrEqual(2);
    }
  });

  test("reports every message it has", () => {
    for (const messageId of Object.keys(rule.messages)) expect(source.split(messageId).length).toBeGreaterThan(2);
  });

  test("consults other tables only where it says so", () => {
    const consults: readonly (readonly [RegExp, string])[] = [
      [/facts\.lenders\(/, "lenders"],
      [/facts\.lenderNames\(/, "pieces"],
      [/facts\.lenderNames\(/, "requests"],
      [/facts\.looks\(|listedRow\(|facts\.looksOf\(|facts\.lookPieces\(/, "looks"],
      [/facts\.lookPieces\(/, "pieces"],
      [/facts\.days\(/, "looks"],
      [/facts\.days\(/, "day"],
      [/facts\.(?:days|plans|notes)\b|chaseDaysFor\(/, "notes"],
    ];
    const declared: readonly string[] = [...(rule.scope === "workbook" ? rule.tables : []), ...(rule.uses ?? [])];
    for (const [pattern, kind] of consults) if (pattern.test(source)) expect(declared).toContain(kind);
  });
});
