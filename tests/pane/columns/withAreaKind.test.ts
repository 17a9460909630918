import { withAreaKind } from "../../../src/pane/columns/withAreaKind";
import { chosenKind } from "../../../src/sheet/chosenKind";

test("an area is known by its headings, and a later choice takes the earlier one's place", () => {
  const first = withAreaKind([], ["Look", "", "Song"], "looks");
  expect(first).toEqual([{ headings: ["Look", "Song"], kind: "looks" }]);
  expect(withAreaKind(first, ["Look", "", "Song"], null)).toEqual([{ headings: ["Look", "Song"], kind: null }]);
  expect(withAreaKind(first, ["Look", "", "Song"], undefined)).toEqual([]);
});

test("choices for other areas of the sheet stay", () => {
  const other = { headings: ["Wer", "Was"], kind: "pieces" as const };
  const both = withAreaKind([other], ["Look", "Song"], "looks");
  expect(both).toHaveLength(2);
  expect([chosenKind(["Wer", "Was"], both), chosenKind(["Look", "Song"], both)]).toEqual(["pieces", "looks"]);
});
