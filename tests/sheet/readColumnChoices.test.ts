import { readColumnChoices } from "../../src/sheet/readColumnChoices";
import { reads } from "./reads";

test.each([
  [
    "value=Ins. amt; lender=From",
    [
      ["value", "Ins. amt"],
      ["lender", "From"],
    ],
  ],
  [
    "value=Ins. amt\nlender=From\n",
    [
      ["value", "Ins. amt"],
      ["lender", "From"],
    ],
  ],
  [
    "out=A, due=B,back=C",
    [
      ["out", "A"],
      ["due", "B"],
      ["back", "C"],
    ],
  ],
  ["value=Worth, in £, each", [["value", "Worth, in £, each"]]],
  ["value=Worth, so=called", [["value", "Worth, so=called"]]],
  ["Quantity back = Came back", [["quantityBack", "Came back"]]],
  ["QUANTITYBACK=Came back", [["quantityBack", "Came back"]]],
  ["Press office=From", [["lender", "From"]]],
  ["due=", [["due", null]]],
  ["value=a=b", [["value", "a=b"]]],
  ["note=Value (1; 2)", "columns-not-understood"],
  ["", []],
  [null, []],
  [0, []],
  ["value", "columns-not-understood"],
  ["=Ins. amt", "columns-not-understood"],
  ["worth it=Ins. amt", "columns-not-understood"],
  ["value=a;value=b", "columns-contradict"],
  [{ error: "#NAME?" }, "error-in-cell"],
])("%j", (raw, expected) => {
  const outcome = readColumnChoices(raw, "pieces");
  const listed = outcome.ok ? outcome.value.map(({ field, heading }) => [field, heading]) : reads(outcome);
  expect(listed).toEqual(expected);
});
