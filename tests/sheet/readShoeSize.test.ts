import { readShoeSize } from "../../src/sheet/readShoeSize";
import { readShoeSystem } from "../../src/sheet/readShoeSystem";
import { reads } from "./reads";

test.each([
  [38, 38, null],
  ["38", 38, null],
  ["38½", 38.5, null],
  ["7 1/2", 7.5, null],
  ["38,5", 38.5, null],
  ["EU 38", 38, "EU"],
  ["UK7", 7, "UK"],
  ["7.5 UK", 7.5, "UK"],
  ["US 8 women", 8, "US women"],
  ["US men's 9", 9, "US men"],
  ["265 mm", 265, "Mondopoint"],
])("%j is %d %j", (raw, size, system) => {
  expect(reads(readShoeSize(raw, "size"))).toEqual({ size, system });
});

test.each(["38-39", "US 8", "medium", true, "EU 38 UK 5"])("%j is refused", (raw) => {
  expect(reads(readShoeSize(raw, "size"))).toBe("argument-not-usable");
});

test("blank, also 0, is null; an error stays one", () => {
  for (const raw of [null, "", 0]) expect(reads(readShoeSize(raw, "size"))).toBeNull();
  expect(reads(readShoeSize({ error: "#N/A" }, "size"))).toBe("error-in-cell");
});

test.each([
  ["eu", "EU"],
  ["Mondopoint", "Mondopoint"],
  ["US men's", "US men"],
  ["Women's US", "US women"],
  ["GB", "UK"],
  ["", null],
  ["US", "argument-not-usable"],
])("%j is the system %j", (raw, expected) => {
  expect(reads(readShoeSystem(raw, "from"))).toBe(expected);
});
