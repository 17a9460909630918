import { readCell } from "../../src/sheet/readCell";

test.each([
  [5, 5],
  ["a", "a"],
  [true, true],
  [null, null],
  [undefined, null],
  ["", null],
  [{ type: "FormattedNumber", basicValue: 5, numberFormat: "0" }, 5],
  [{ type: "Double", basicValue: 0 }, 0],
  [{ type: "String", basicValue: "a" }, "a"],
  [{ type: "Boolean", basicValue: false }, false],
  [{ type: "Empty", basicValue: "" }, null],
  [{ type: "Error", basicValue: "#N/A" }, { error: "#N/A" }],
  [{ code: "#REF!" }, { error: "#REF!" }],
  [{ error: "#DIV/0!" }, { error: "#DIV/0!" }],
  [[[5]], 5],
  [[[null]], null],
  // What is not one value is an error value and never text such as [object Object].
  [[[1, 2]], { error: "#VALUE!" }],
  [[], { error: "#VALUE!" }],
  [{}, { error: "#VALUE!" }],
  [{ basicValue: { basicValue: 1 } }, { error: "#VALUE!" }],
  [10n, { error: "#VALUE!" }],
  [Symbol("x"), { error: "#VALUE!" }],
])("%p", (raw, cell) => expect(readCell(raw)).toEqual(cell));
