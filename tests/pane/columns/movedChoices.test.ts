import { movedChoices } from "../../../src/pane/columns/movedChoices";
import { namesGone } from "../../../src/pane/columns/namesGone";

const choice = (field: string, heading: string) => ({ kind: "pieces" as const, field, heading });
const kept = {
  columns: { Old: [choice("value", "A"), choice("due", "B")], New: [choice("value", "C")] },
  kinds: { Old: [{ headings: ["Song"], kind: null }] },
};

test("choices go to the other sheet behind its own, which count", () => {
  expect(movedChoices(kept, "Old", "New")).toEqual({
    columns: { New: [choice("value", "C"), choice("due", "B")] },
    kinds: { New: [{ headings: ["Song"], kind: null }] },
  });
});

test("choices are dropped on asking, and those of other sheets stay", () => {
  expect(movedChoices(kept, "Old", null)).toEqual({ columns: { New: [choice("value", "C")] }, kinds: {} });
});

test("sheets that are gone are named once, whatever was chosen for them", () => {
  expect(namesGone(kept, ["New", "Other"])).toEqual(["Old"]);
});
