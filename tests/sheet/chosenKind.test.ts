import { chosenKind } from "../../src/sheet/chosenKind";

const odd = { headings: ["Wer", "Was", "Bis"], kind: "pieces" as const };

test("an area is known by its headings, whatever their case and order", () => {
  expect(chosenKind(["bis", "", "WAS", "wer"], [odd])).toBe("pieces");
});

test("one heading of three may have been renamed, two may not", () => {
  expect(chosenKind(["Wer", "Was", "Zurück"], [odd])).toBe("pieces");
  expect(chosenKind(["Wer", "Stück", "Zurück"], [odd])).toBeUndefined();
});

test("an area set aside is told from one that nobody chose for", () => {
  expect(chosenKind(["Song", "Singer"], [{ headings: ["Song", "Singer"], kind: null }])).toBeNull();
  expect(chosenKind(["Song", "Singer"], [])).toBeUndefined();
});

test("of several choices the one with most headings in common counts, and of equals the last", () => {
  const other = { headings: ["Wer"], kind: "lenders" as const };
  expect(chosenKind(["Wer", "Was", "Bis"], [odd, other])).toBe("pieces");
  expect(chosenKind(["Wer", "Was", "Bis"], [odd, { ...odd, kind: "looks" }])).toBe("looks");
});
