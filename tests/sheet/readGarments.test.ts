import { sayProblem } from "../../src/domain/wording";
import { readGarments } from "../../src/sheet/readGarments";
import { readMinutesByKind } from "../../src/sheet/readMinutesByKind";

function kinds(cells: unknown[][] | null, own: unknown[][] | null = null): unknown {
  const minutes = readMinutesByKind(own);
  if (!minutes.ok) return sayProblem(minutes.problem);
  const outcome = readGarments(cells, "wearing", minutes.value);
  return outcome.ok ? outcome.value : sayProblem(outcome.problem);
}

test.each([
  [
    "pieces joined by a word or a sign",
    [["dress and coat, 2 rings & hat"]],
    ["dress", "coat", "jewellery", "jewellery", "hat"],
  ],
  ["two of one kind", [["ring and ring"]], ["jewellery", "jewellery"]],
  ["one piece of two colours", [["black and white shirt"]], ["shirt"]],
  ["cells", [["Silk dress"], ["Boots"]], ["dress", "boots"]],
  ["one text", [["shirt, trousers; shoes"]], ["shirt", "trousers", "shoes"]],
  ["blank cells, also sent as 0", [["shirt", 0, null, ""]], ["shirt"]],
  ["a stray comma", [["shirt,, belt,"]], ["shirt", "belt"]],
  ["a few of one kind", [["2 rings, 3 x ring"]], ["jewellery", "jewellery", "jewellery", "jewellery", "jewellery"]],
  ["a number that counts nothing", [["70 denier tights"]], ["hosiery"]],
  ["nothing", null, []],
] as [string, unknown[][] | null, string[]][])("%s", (_, cells, expected) => {
  expect(kinds(cells)).toEqual(expected);
});

test("a kind of the sheet's own is known by its minutes", () => {
  expect(kinds([["Harness"]], [["harness", 4]])).toHaveLength(1);
  expect(kinds([["shirt + harness"]], [["harness", 4]])).toHaveLength(2);
  expect(kinds([["Rope and harness"]], [["Rope and harness", 4]])).toHaveLength(1);
  expect(kinds([["Harness"]])).toBe(
    'wearing: "Harness" cannot be used; give a kind of garment such as "dress", or give its minutes in minutesByKind.',
  );
});

test("an error in a cell is named", () => {
  expect(kinds([[{ error: "#REF!" }]])).toMatch(/^wearing holds the error #REF!/);
});
