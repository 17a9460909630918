import { findingsSheet } from "../../../src/pane/check/findingsSheet";
import { groupFindings } from "../../../src/pane/check/groupFindings";
import { initialCheckState } from "../../../src/pane/check/checkReducer";
import { readWorkbook } from "../../../src/sheet/readWorkbook";
import type { FakeSheet } from "../fakePort";
import { fakePort } from "../fakePort";
import { readSheets } from "../readSheets";
import { finding } from "./finding";

// 2026-04-07.
const ASOF = 46119;
const loans: FakeSheet = {
  name: "Loans",
  rows: [
    ["Piece", "Lender", "Out", "Due"],
    ["1", "Ado", 46086, "9 Mar 2026"],
    ["2", "Ado", 46086, 46085],
  ],
};
const open = [
  finding({ at: { sheetId: "s0", row: 1, column: 3 }, raw: "9 Mar 2026" }),
  finding({
    ruleId: "datesOutOfOrder",
    severity: "error",
    at: { sheetId: "s0", row: 2, column: 3 },
    raw: 46085,
    message: "=HYPERLINK() is no formula here.",
  }),
].map((each, index) => ({ id: String(index), key: String(index), finding: each }));
const groups = groupFindings(open, initialCheckState.filter, []);

test("the findings stand on a sheet named after the day, the most serious first, each with its cell and what it holds", async () => {
  const sheet = findingsSheet(groups, await readSheets([loans]), ASOF);
  expect([sheet.name, sheet.tableName]).toEqual(["Findings 2026-04-07", "Findings20260407"]);
  expect(sheet.rows).toEqual([
    ["error", "Loans", "D3", "Due", "2026-03-04", "=HYPERLINK() is no formula here.", "Text does not sort."],
    ["warning", "Loans", "D2", "Due", '"9 Mar 2026"', "It is text.", "Text does not sort."],
  ]);
});

test("a sheet of that name is never written over: the next one gets a number", async () => {
  const table = { name: "FINDINGS20260407", row: 0, column: 0, rowCount: 2, columnCount: 1 };
  const read = await readSheets([loans, { name: "findings 2026-04-07", rows: [["x"], [1]], tables: [table] }]);
  const sheet = findingsSheet(groups, read, ASOF);
  expect([sheet.name, sheet.tableName]).toEqual(["Findings 2026-04-07 2", "Findings20260407_2"]);
});

test("the sheet is built in one step, read as no table of the job, and taken away again whole", async () => {
  const port = fakePort([loans]);
  const read = await readSheets([loans]);
  const built = await port.build("findings", {
    addSheets: [findingsSheet(groups, read, ASOF)],
    removeSheets: [],
    addColumns: [],
    removeColumns: [],
  });
  if (!built.ok) throw new Error("not built");
  const after = await port.readWorkbook();
  if (!after.ok) throw new Error("not read");
  expect(after.value.sheets.map(({ name }) => name)).toEqual(["Loans", "Findings 2026-04-07"]);
  const { tables, unread } = readWorkbook(after.value);
  expect(tables.map(({ sheetName }) => sheetName)).toEqual(["Loans"]);
  expect(unread.filter(({ kinds, tableName }) => tableName === null || kinds.length > 1)).toEqual([]);
  await port.restore(built.value);
  const restored = await port.readWorkbook();
  expect(restored.ok && restored.value.sheets.map(({ name }) => name)).toEqual(["Loans"]);
});
