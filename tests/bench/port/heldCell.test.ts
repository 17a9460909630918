import { CellValueType } from "@univerjs/core";
import { heldCell } from "../../../src/bench/port/heldCell";
import { writtenCell } from "../../../src/bench/port/writtenCell";

test.each([
  [undefined, null],
  [{}, null],
  [{ v: "" }, null],
  [{ v: 0, t: CellValueType.NUMBER }, 0],
  [{ v: 1, t: CellValueType.BOOLEAN }, true],
  [{ v: 0, t: CellValueType.BOOLEAN }, false],
  [{ v: "007", t: CellValueType.FORCE_STRING }, "007"],
  [{ v: "007", t: CellValueType.STRING }, "007"],
  [{ v: "12.5", t: CellValueType.NUMBER }, 12.5],
  [{ v: "#N/A", t: CellValueType.STRING }, { error: "#N/A" }],
  [{ p: { id: "d", documentStyle: {}, body: { dataStream: "two words\r\n" } } }, "two words"],
])("%j of the grid is %j", (held, cell) => {
  expect(heldCell(held)).toEqual(cell);
});

test("what is written is what is held, for every sort of cell", () => {
  const at = { sheetId: "1", row: 0, column: 0 };
  for (const value of [null, 0, -1.5, true, false, "x", "007", "=A1", "TRUE"]) {
    const { v, t } = writtenCell({ at, expected: null, value });
    expect(heldCell({ v, t })).toEqual(value);
  }
});
