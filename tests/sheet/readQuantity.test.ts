import { readQuantity } from "../../src/sheet/readQuantity";
import { reads } from "./reads";

test.each([
  [3, 3],
  [0, 0],
  ["3", 3],
  ["3 pcs", 3],
  ["3pcs.", 3],
  ["x3", 3],
  ["3x", 3],
  ["× 3", 3],
  ["1 pair", 1],
  ["2 prs", 2],
  ["4 Stück", 4],
  ["2 paires", 2],
  ["qty 3", 3],
  [null, null],
  ["", null],
  [1.5, "argument-not-usable"],
  [-1, "argument-not-usable"],
  ["-1", "argument-not-usable"],
  ["1.5", "argument-not-usable"],
  ["one", "argument-not-usable"],
  ["2 of 3", "argument-not-usable"],
  ["3 kg", "argument-not-usable"],
  [true, "argument-not-usable"],
  [{ error: "#N/A" }, "error-in-cell"],
])("%j reads as %j", (raw, value) => expect(reads(readQuantity(raw, "quantity"))).toBe(value));
