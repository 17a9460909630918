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

test.each([
  ["US 8 W", "US women", 8],
  ["US 8 M", "US women", 8],
  ["us 9.5M", "US men", 9.5],
] as const)("%j beside a column of %s is one of them: the letter may be a width", (raw, told, size) => {
  expect(reads(readShoeSize(raw, "size", told))).toEqual({ size, system: told });
  expect(reads(readShoeSize(raw, "size"))).toBe("argument-not-usable");
  expect(reads(readShoeSize(raw, "size", "EU"))).toBe("argument-not-usable");
});

test("a letter before the size says whose it is", () => {
  expect(reads(readShoeSize("US W 8", "size"))).toEqual({ size: 8, system: "US women" });
  expect(reads(readShoeSize("US M9", "size"))).toEqual({ size: 9, system: "US men" });
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
