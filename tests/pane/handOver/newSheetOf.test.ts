import { newSheetOf } from "../../../src/pane/handOver/newSheetOf";
import { readSheets } from "../readSheets";

const workbookOf = async (...names: string[]) =>
  (
    await readSheets(
      names.map((name) => ({
        name,
        rows: [],
        tables: [{ name: "handover", row: 0, column: 0, rowCount: 1, columnCount: 1 }],
      })),
    )
  ).workbook;

test("a column of dates or times alone becomes real ones, and everything else stays as it is", async () => {
  const table = {
    headings: ["Piece", "Due", "Ready by", "Note"],
    rows: [
      ["2026-03-05", "2026-03-05", "09:30", "=1+1"],
      ["7", "", "25:30", null],
    ],
  };
  expect(newSheetOf("Run sheet 2026-03-05", table, await workbookOf("Loans"))).toEqual({
    name: "Run sheet 2026-03-05",
    tableName: "HandOver2",
    headings: table.headings,
    rows: [
      ["2026-03-05", 46086, 9.5 / 24, "=1+1"],
      ["7", null, 25.5 / 24, null],
    ],
    formats: [null, "yyyy-mm-dd", "[h]:mm", null],
    lists: [null, null, null, null],
  });
});

test.each([
  ["Slips", ["slips"], "Slips 2"],
  ["Slips", ["Slips", "SLIPS 2"], "Slips 3"],
  ["a".repeat(40), ["a".repeat(31)], `${"a".repeat(29)} 2`],
  ["Bags: [all]/today?", [], "Bags all today"],
  ["'", [], "Hand over"],
])("%s beside %j is called %s", async (title, taken, name) => {
  expect(newSheetOf(title, { headings: ["A"], rows: [["x"]] }, await workbookOf(...taken)).name).toBe(name);
});
