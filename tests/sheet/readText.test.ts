import { readText } from "../../src/sheet/readText";
import { reads } from "./reads";

test.each([
  ["  Maison Orla ", "Maison Orla"],
  ["\u00a0Orla\u00a0", "Orla"],
  [12, "12"],
  [0, "0"],
  [true, "TRUE"],
  [{ type: "String", basicValue: "Orla" }, "Orla"],
  ["", null],
  ["   ", null],
  [null, null],
  [undefined, null],
  [[["Orla"]], "Orla"],
  [[["Orla", "Ola"]], "argument-not-usable"],
  [{ error: "#N/A" }, "error-in-cell"],
])("%j reads as %j", (raw, text) => expect(reads(readText(raw, "lender"))).toBe(text));
