import fc from "fast-check";
import { LASTING, type Lasting } from "./phrasings";
import { REFUSED } from "./refusals";
import { isoFromSerial } from "../../../../src/domain/dates/isoFromSerial";
import { lastSerial } from "../../../../src/domain/dates/lastSerial";
import { parseTerms } from "../../../../src/domain/dates/terms/parseTerms";
import { sayTerms } from "../../../../src/domain/dates/terms/sayTerms";
import type { Terms } from "../../../../src/domain/dates/terms/terms";
import { sayProblem } from "../../../../src/domain/wording";

const someAnchor = fc.constantFrom("out", "shoot", "receipt") as fc.Arbitrary<"out" | "shoot" | "receipt">;
const someTerms: fc.Arbitrary<Terms> = fc.oneof(
  fc.record({ kind: fc.constant("days" as const), count: fc.integer({ min: 0, max: 3650 }), from: someAnchor }),
  fc.record({ kind: fc.constant("working days" as const), count: fc.integer({ min: 1, max: 3650 }), from: someAnchor }),
  fc.record({ kind: fc.constant("months" as const), count: fc.integer({ min: 1, max: 120 }), from: someAnchor }),
  fc.record({ kind: fc.constant("weekday" as const), weekday: fc.integer({ min: 0, max: 6 }), from: someAnchor }),
  fc.record({ kind: fc.constant("month end" as const), monthsOn: fc.constantFrom(0 as const, 1 as const) }),
  fc.record({ kind: fc.constant("date" as const), day: fc.integer({ min: 1, max: lastSerial }) }),
);

describe("parseTerms", () => {
  it.each(LASTING as Lasting[])("reads %j as %s", (phrase, sentence) => {
    const terms = parseTerms(phrase);
    expect(terms.ok ? sayTerms(terms.value) : sayProblem(terms.problem)).toBe(sentence);
  });

  it.each(REFUSED)("refuses %j and says %j", (phrase, part) => {
    const terms = parseTerms(phrase);
    expect(terms.ok ? sayTerms(terms.value) : null).toBeNull();
    if (terms.ok) return;
    expect([
      "terms-not-understood",
      "terms-ambiguous",
      "date-ambiguous",
      "date-figures-only",
      "argument-not-usable",
    ]).toContain(terms.problem.reason);
    expect(sayProblem(terms.problem)).toContain(part);
  });

  it("reads every kind of terms back from the sentence that says them", () => {
    fc.assert(
      fc.property(someTerms, (terms) => expect(parseTerms(sayTerms(terms))).toEqual({ ok: true, value: terms })),
      {
        numRuns: 2000,
      },
    );
  });

  it("reads a number as calendar days", () => {
    expect(parseTerms(10)).toEqual({ ok: true, value: { kind: "days", count: 10, from: "out" } });
    expect(parseTerms("10")).toEqual(parseTerms(10));
  });

  it("refuses numbers that are no whole number of days up to ten years, so that a date kept as a number is not a span", () => {
    for (const number of [1.5, -1, 3651, 46086, NaN, Infinity]) {
      const terms = parseTerms(number);
      expect(terms.ok ? null : terms.problem.reason).toBe("argument-not-usable");
    }
  });

  it("asks for terms where there are none", () => {
    for (const blank of ["", "  "]) {
      const terms = parseTerms(blank);
      expect(terms.ok ? null : terms.problem.reason).toBe("argument-missing");
    }
  });

  it("reads a fixed day in any form a date may take", () => {
    const day = { ok: true, value: { kind: "date", day: 46086 } };
    expect(isoFromSerial(46086)).toBe("2026-03-05");
    for (const phrase of [
      "by 2026-03-05",
      "2026-03-05",
      "return by 5 Mar 2026",
      "due 5th March 2026",
      "Thu 5 Mar 2026",
      "no later than March 5, 2026",
      "back by 5-Mar-26",
      "avant le 5 mars 2026",
      "au plus tard le 5 mars 2026",
      "jusqu'au 5 mars 2026",
      "antes del 5 de marzo de 2026",
      "hasta el 5 de marzo de 2026",
      "entro il 5 marzo 2026",
      "bis 5. März 2026",
      "bis zum 5. März 2026",
      "spätestens 5. März 2026",
    ]) {
      const terms = parseTerms(phrase);
      // "before the 5th" leaves the 4th; so it is refused in every language.
      if (/avant|antes/.test(phrase)) expect(terms.ok).toBe(false);
      else expect({ phrase, ...terms }).toEqual({ phrase, ...day });
    }
  });

  it("ignores case, accents, and spaces around", () => {
    fc.assert(
      fc.property(fc.constantFrom(...(LASTING as Lasting[])), ([phrase, sentence]) => {
        for (const variant of [phrase.toUpperCase().replace("ẞ", "SS"), `  ${phrase}. `, phrase.normalize("NFD")]) {
          const terms = parseTerms(variant);
          expect(terms.ok ? sayTerms(terms.value) : variant).toBe(sentence);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("never throws and never loses a minus sign or a decimal, whatever is typed", () => {
    fc.assert(
      fc.property(fc.string(), (text) => typeof parseTerms(text).ok === "boolean"),
      { numRuns: 2000 },
    );
    fc.assert(
      fc.property(
        fc.constantFrom("-", "−", "–", "~", "<", ">", "±", "1.", "1,"),
        fc.integer({ min: 1, max: 99 }),
        (sign, number) => {
          expect(parseTerms(`${sign}${number} days`).ok).toBe(false);
        },
      ),
    );
  });
});
