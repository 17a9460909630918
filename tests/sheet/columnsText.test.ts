import fc from "fast-check";
import type { ColumnChoice } from "../../src/sheet/columnChoice";
import { columnsText } from "../../src/sheet/columnsText";
import { headingVocabulary } from "../../src/sheet/headingVocabulary";
import { readColumnChoices } from "../../src/sheet/readColumnChoices";

test("says the choices as the columns argument takes them, and that no column is a field", () => {
  const choices = [
    { field: "value", heading: "Ins. amt" },
    { field: "lender", heading: "From" },
    { field: "due", heading: null },
  ];
  expect(columnsText(choices)).toEqual({ text: "value=Ins. amt; lender=From; due=", unsaid: [] });
});

test("leaves out a heading that the argument cannot name", () => {
  const choice = { field: "value", heading: "Value; insured" };
  expect(columnsText([choice])).toEqual({ text: "", unsaid: [choice] });
});

test("the columns argument reads what was said", () => {
  const fields = [...headingVocabulary("pieces").canonical.keys()];
  const choices = fc
    .uniqueArray(fc.record({ field: fc.constantFrom(...fields), heading: fc.oneof(fc.string(), fc.constant(null)) }), {
      selector: ({ field }) => field,
    })
    .map((list) => list.filter(({ heading }) => heading === null || heading.trim() !== ""))
    .filter((list) => new Set(list.map(({ heading }) => heading?.trim() ?? {})).size === list.length);
  fc.assert(
    fc.property(choices, (list: readonly ColumnChoice[]) => {
      const { text, unsaid } = columnsText(list);
      const said = list.filter((choice) => !unsaid.includes(choice));
      const expected = said.map(({ field, heading }) => ({ field, heading: heading === null ? null : heading.trim() }));
      expect(readColumnChoices(text, "pieces")).toEqual({ ok: true, value: expected });
    }),
  );
});
