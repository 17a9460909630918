import fc from "fast-check";
import { functionDocs } from "../../src/build/functionDocs.mjs";
import { HostError } from "./HostError";
import { outcomeOf } from "./outcomeOf";
import { readFormula } from "./readFormula";
import { standInHost } from "./standInHost";

let takeAway: () => void;
beforeAll(() => (takeAway = standInHost("Double")));
afterAll(() => takeAway());

const cell: fc.Arbitrary<unknown> = fc.oneof(
  fc.constantFrom(
    null,
    undefined,
    "",
    " ",
    0,
    -1,
    1,
    0.5,
    46083,
    2958465,
    2958466,
    1e308,
    -0,
    NaN,
    Infinity,
    true,
    false,
  ),
  fc.constantFrom(
    "2026-03-05",
    "5 Mar 2026",
    "03/04/26",
    "31 Feb 2026",
    "3 working days",
    "£1,250.00",
    "1.250,00 €",
    "09:30",
    "9.30am",
    "25:30",
    "tbc",
    "#N/A",
  ),
  fc.string({ maxLength: 12 }),
  fc.double(),
  fc.record({ type: fc.constant("FormattedNumber"), basicValue: fc.double(), numberFormat: fc.string() }),
  fc.record({ type: fc.constant("Error"), basicValue: fc.constantFrom("#N/A", "#REF!", "#VALUE!") }),
  fc.constantFrom<unknown>({ code: "#DIV/0!", message: "x" }, { error: "#N/A" }, {}, [], [[]], {
    type: "Entity",
    text: "x",
  }),
  fc.jsonValue(),
);
const matrix = fc.array(fc.array(cell, { maxLength: 6 }), { maxLength: 6 });
const anything = fc.oneof(cell, matrix, fc.jsonValue());

/** An argument of an example, as it is or with some of its cells exchanged for anything. */
function around(example: unknown): fc.Arbitrary<unknown> {
  if (!Array.isArray(example)) return fc.oneof(fc.constant(example ?? null), cell, anything);
  const width = (example[0] as unknown[]).length;
  const exchanged = fc.array(fc.tuple(fc.nat(example.length), fc.nat(width), cell), { maxLength: 5 }).map((changes) => {
    const copy = (example as unknown[][]).map((row) => [...row]);
    for (const [row, column, value] of changes) if (copy[row] !== undefined) copy[row]![column] = value;
    return copy;
  });
  const moreRows = fc
    .array(fc.array(cell, { minLength: width, maxLength: width }), { maxLength: 8 })
    .map((rows) => [...(example as unknown[][]), ...rows]);
  const fewerRows = fc.nat(example.length).map((count) => (example as unknown[][]).slice(0, count));
  return fc.oneof(
    { weight: 3, arbitrary: exchanged },
    { weight: 2, arbitrary: fewerRows },
    { weight: 3, arbitrary: moreRows },
    { weight: 1, arbitrary: anything },
  );
}

/** What a host can show in a cell. */
function isShowable(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value);
  if (typeof value === "string" || typeof value === "boolean" || value instanceof HostError) return true;
  const { type, basicValue, numberFormat } = (value ?? {}) as Record<string, unknown>;
  return type === "Double" && Number.isFinite(basicValue) && typeof numberFormat === "string";
}

describe.each(functionDocs().map((doc) => [doc.id, doc] as const))("%s", (id, doc) => {
  const holds = (args: readonly unknown[]): void => {
    const outcome = outcomeOf(id.toLowerCase(), args);
    if ("error" in outcome) {
      expect(["#VALUE!", "#N/A"]).toContain(outcome.error.code);
      expect(outcome.error.message).toMatch(/^\S[^\n]*[.!?]$/);
      expect(outcome.error.message).not.toMatch(/undefined|\[object/);
    } else if (doc.returnsTable) {
      const rows = outcome.result as unknown[][];
      expect(rows.length).toBeGreaterThan(0);
      for (const row of rows) {
        expect(row.length).toBe(rows[0]!.length);
        for (const value of row) if (!isShowable(value)) throw new Error(`not showable: ${JSON.stringify(value)}`);
      }
    } else expect(isShowable(outcome.result)).toBe(true);
  };

  test("whatever comes in any argument, it gives what a cell can show or the host's error with one sentence", () => {
    fc.assert(fc.property(fc.array(anything, { maxLength: doc.params.length + 1 }), holds), { numRuns: 3000 });
  });

  test("whatever stands in any cell of its examples, too", () => {
    const examples = doc.examples.map((example) => readFormula(example.formula).args);
    const called = fc
      .constantFrom(...examples)
      .chain((args) => fc.tuple(...doc.params.map((_param, place) => around(args[place]))));
    fc.assert(fc.property(called, holds), { numRuns: 300 });
  });
});
