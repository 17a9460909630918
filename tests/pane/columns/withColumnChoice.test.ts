import fc from "fast-check";
import { withColumnChoice } from "../../../src/pane/columns/withColumnChoice";
import { choicesOn } from "../../../src/sheet/choicesOn";
import { assignColumns } from "../../../src/sheet/assignColumns";
import type { KindColumnChoice } from "../../../src/sheet/columnChoices";
import { headingVocabulary } from "../../../src/sheet/headingVocabulary";
import { headingWords } from "../../../src/sheet/headingWords";

const table = (...headings: string[]) => ({ kind: "pieces" as const, headings });
const choice = (field: string, heading: string | null): KindColumnChoice => ({ kind: "pieces", field, heading });

test("a column nobody could know is given its field", () => {
  expect(withColumnChoice([], table("Piece", "Wert intern"), 1, "value")).toEqual([choice("value", "Wert intern")]);
});

test("what the heading says by itself is not kept as a choice", () => {
  const before = [choice("value", "Price")];
  expect(withColumnChoice(before, table("Piece", "Value", "Price"), 1, "value")).toEqual([]);
});

test("a field has one column: a later choice takes it from the earlier one", () => {
  const before = [choice("value", "Fig. 1")];
  expect(withColumnChoice(before, table("Fig. 1", "Fig. 2"), 1, "value")).toEqual([choice("value", "Fig. 2")]);
});

test("a column has one field: a later choice takes the earlier one's place", () => {
  const before = [choice("value", "Fig. 1")];
  expect(withColumnChoice(before, table("Fig. 1"), 0, "weight")).toEqual([choice("weight", "Fig. 1")]);
});

test("a column that is read may be none", () => {
  expect(withColumnChoice([], table("Piece", "Due"), 1, null)).toEqual([{ ...choice("due", null), notHeading: "Due" }]);
});

test("of two that contest a field, the one that is none of it leaves it to the other", () => {
  expect(withColumnChoice([], table("Piece", "Value", "Insured value"), 1, null)).toEqual([
    choice("value", "Insured value"),
  ]);
});

test("choices for other kinds of table on the sheet stay", () => {
  const other = { kind: "looks" as const, field: "order", heading: "Fig. 1" };
  expect(withColumnChoice([other], table("Fig. 1"), 0, "value")).toEqual([other, choice("value", "Fig. 1")]);
});

test("whatever was chosen before, the column is then read as the field that was chosen, or as none", () => {
  const { canonical } = headingVocabulary("pieces");
  const known = ["Piece", "Item", "Value", "Price", "Retail price", "Due", "Return date", "Back", "Name", "Fig. 1", ""];
  const headings = fc
    .uniqueArray(fc.constantFrom(...known, ...canonical.values()), {
      minLength: 1,
      maxLength: 8,
      selector: (heading) => headingWords(heading).join(" "),
    })
    .filter((list) => list.some((heading) => heading !== ""));
  const field = fc.constantFrom(...canonical.keys(), null);
  const steps = fc.array(fc.tuple(fc.nat(), field), { minLength: 1, maxLength: 6 });
  fc.assert(
    fc.property(headings, steps, (list, chosen) => {
      let choices: readonly KindColumnChoice[] = [];
      for (const [pick, wanted] of chosen) {
        const named = list.flatMap((heading, column) => (heading === "" ? [] : [column]));
        const column = named[pick % named.length]!;
        choices = withColumnChoice(choices, table(...list), column, wanted);
        const { columnOf, contested } = assignColumns(list, "pieces", choices);
        if (wanted !== null) expect(columnOf[wanted]).toBe(column);
        else {
          expect(Object.values(columnOf)).not.toContain(column);
          expect([...contested.values()].flat()).not.toContain(column);
        }
        const fields = choices.map((one) => one.field);
        expect(new Set(fields).size).toBe(fields.length);
      }
    }),
    { numRuns: 400 },
  );
});

test("what another table of the sheet goes by stays when this one is given its own", () => {
  const other = ["Piece", "Fig. 1"];
  const before = [choice("value", "Fig. 1")];
  expect(withColumnChoice(before, table("Piece", "Fig. 2"), 1, "value", [other])).toEqual([
    choice("value", "Fig. 1"),
    choice("value", "Fig. 2"),
  ]);
  const both = withColumnChoice(before, table("Fig. 1", "Fig. 2"), 1, "value", [other]);
  expect(assignColumns(["Fig. 1", "Fig. 2"], "pieces", both).columnOf).toMatchObject({ value: 1 });
  expect(assignColumns(other, "pieces", choicesOn(other, both)).columnOf).toMatchObject({ value: 1 });
});
