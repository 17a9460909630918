import { parseTerms } from "../../../src/domain/dates/terms/parseTerms";
import type { Problem } from "../../../src/domain/problem";
import { refundDay } from "../../../src/domain/value/refundDay";
import { sayProblem } from "../../../src/domain/wording";

const SATURDAY = 46088;

function dayFor(terms: string | number, bought: number | null = SATURDAY) {
  const parsed = parseTerms(terms);
  if (!parsed.ok) throw new Error(sayProblem(parsed.problem));
  return refundDay({ bought, terms: parsed.value });
}

test("counts from the receipt as day 0 and never moves a day at the weekend", () => {
  expect(dayFor("28 days")).toBe(SATURDAY + 28);
  expect(dayFor("15 days from receipt")).toBe(SATURDAY + 15);
  expect(dayFor(14)).toBe(SATURDAY + 14);
  expect(dayFor("same day")).toBe(SATURDAY);
});

test("a fixed day stands, also where the receipt has none", () => {
  expect(dayFor("by 2026-04-30", null)).toBe(46142);
});

test("is null where the receipt has no day or the shop's terms are not given", () => {
  expect(dayFor("28 days", null)).toBeNull();
  expect(refundDay({ bought: SATURDAY, terms: null })).toBeNull();
});

test("what cannot be read, and terms that count from a shoot, are problems", () => {
  const unread: Problem = { reason: "error-in-cell", facts: { argument: "Bought, row 2", given: "#N/A" } };
  expect(refundDay({ bought: SATURDAY, terms: unread })).toBe(unread);
  expect(refundDay({ bought: unread, terms: { kind: "days", count: 7, from: "out" } })).toBe(unread);
  const afterShoot = dayFor("3 days after shoot");
  expect(sayProblem(afterShoot as Problem)).toMatch(/^shoot is blank/);
});
