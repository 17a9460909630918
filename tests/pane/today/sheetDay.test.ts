import { sheetDay } from "../../../src/pane/today/sheetDay";
import type { Cell } from "../../../src/sheet/cell";
import { readSheets } from "../readSheets";

test("the day a sheet counts for is the date beside its words, and a word without a date is none", async () => {
  const own = async (rows: readonly (readonly Cell[])[]) =>
    sheetDay((await readSheets([{ name: "Job", rows }])).workbook);
  expect(await own([["Harbour Light"], [null], ["As-of day", 46119]])).toEqual({
    day: 46119,
    at: { sheetId: "s0", row: 2, column: 1 },
    sheetName: "Job",
  });
  expect(await own([["as of", "soon"]])).toBeNull();
  expect(await own([["Last shoot day", 46112]])).toBeNull();
});
