import fc from "fast-check";
import { headingVocabulary } from "../../src/sheet/headingVocabulary";
import { parseKeptChoices } from "../../src/sheet/parseKeptChoices";
import { tableKinds } from "../../src/sheet/tableKinds";

const columns = {
  Loans: [
    { kind: "pieces", field: "value", heading: "Ins. amt" },
    { kind: "pieces", field: "due", heading: null },
  ],
};
const kinds = {
  Odd: [
    { headings: ["Wer", "Was"], kind: "pieces" },
    { headings: ["Song"], kind: null },
  ],
};

test("gives the choices that were kept", () => {
  expect(parseKeptChoices(JSON.stringify({ columns, kinds }))).toEqual({ columns, kinds, unreadable: 0 });
});

test.each([[null], [""], ["  "], ["{}"]])("gives no choices for %j", (text) => {
  expect(parseKeptChoices(text)).toEqual({ columns: {}, kinds: {}, unreadable: 0 });
});

test.each([
  ["no JSON", "value=Ins. amt"],
  ["a list", "[]"],
  ["null", "null"],
  ["a list of sheets", '{"columns":[1]}'],
  ["a sheet without a list", '{"columns":{"Loans":"value"}}'],
  ["a field that is not known", '{"columns":{"Loans":[{"kind":"pieces","field":"price tag","heading":"P"}]}}'],
  ["a kind that is not known", '{"columns":{"Loans":[{"kind":"constructor","field":"value","heading":"P"}]}}'],
  ["a blank heading", '{"columns":{"Loans":[{"kind":"pieces","field":"value","heading":" "}]}}'],
  ["an area without headings", '{"kinds":{"Loans":[{"kind":"pieces","headings":[]}]}}'],
])("passes over %s and counts it", (_, text) => {
  expect(parseKeptChoices(text)).toEqual({ columns: {}, kinds: {}, unreadable: 1 });
});

test("keeps the first of two choices that contradict one another, and both where each is for a heading of its own", () => {
  const first = { kind: "pieces", field: "value", heading: "A" };
  const same = [first, { ...first, heading: "B" }, { ...first, field: "totalValue" }, { ...first, kind: "receipts" }];
  const read = parseKeptChoices(JSON.stringify({ columns: { Loans: same } }));
  // Two tables of one sheet may each have their own heading for a field.
  expect(read).toEqual({ columns: { Loans: [first, { ...first, heading: "B" }] }, kinds: {}, unreadable: 2 });
});

test("never fails, and what it gives it gives again", () => {
  const choice = fc.record({
    kind: fc.constantFrom(...tableKinds, "odd"),
    field: fc.constantFrom("value", "due", "lender", "__proto__"),
    heading: fc.oneof(fc.string(), fc.constant(null), fc.integer()),
  });
  const list = fc.oneof(fc.array(choice), fc.jsonValue());
  const name = fc.oneof(fc.string(), fc.constantFrom("__proto__", "constructor"));
  const kept = fc.oneof(
    fc.jsonValue(),
    fc.record({ columns: fc.dictionary(name, list), kinds: fc.dictionary(name, list) }),
  );
  fc.assert(
    fc.property(
      fc.oneof(
        fc.string(),
        kept.map((value) => JSON.stringify(value)),
      ),
      (text) => {
        const { unreadable, ...read } = parseKeptChoices(text);
        expect(unreadable).toBeGreaterThanOrEqual(0);
        expect(parseKeptChoices(JSON.stringify(read))).toEqual({ ...read, unreadable: 0 });
        for (const choices of Object.values(read.columns)) {
          for (const { kind, field } of choices) expect(headingVocabulary(kind).canonical.has(field)).toBe(true);
        }
      },
    ),
  );
});
