import { readIsOutside } from "../../src/sheet/readIsOutside";
import { reads } from "./reads";

test.each([
  ["outside", true],
  ["EXT.", true],
  ["INT/EXT", true],
  ["inside and out", true],
  ["draußen", true],
  ["dehors", true],
  ["dentro e fuori", true],
  ["on the street", true],
  ["beach", true],
  ["indoors", false],
  ["studio", false],
  ["Park Street studio", false],
  ["dedans", false],
  ["", null],
  [0, null],
  ["location", "argument-not-usable"],
  ["yes", "argument-not-usable"],
  [{ error: "#N/A" }, "error-in-cell"],
])("%j is %j", (raw, expected) => {
  expect(reads(readIsOutside(raw, "Where"))).toBe(expected);
});
