import { columnParts } from "../../src/sheet/columnParts";

test.each([
  [
    "semicolons and line ends part",
    "value=Ins. amt; lender=From\nout=Went",
    ["value=Ins. amt", " lender=From", "out=Went"],
  ],
  ["so does a comma before a field", "value=Ins. amt, lender=From", ["value=Ins. amt", " lender=From"]],
  ["of any of the kinds", "value=Ins. amt, shooting=Mins", ["value=Ins. amt", " shooting=Mins"]],
  ["a comma in a heading does not", "value=Worth, in £, out=Went", ["value=Worth, in £", " out=Went"]],
  ["nor one before a word that is no field", "value=Worth, so=called", ["value=Worth, so=called"]],
])("%s", (_, text, parts) => {
  expect(columnParts(text, ["pieces", "looks"])).toEqual(parts);
});
