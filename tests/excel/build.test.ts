import { createExcelPort } from "../../src/excel/excelPort";
import type { BuildPlan, NewSheet } from "../../src/sheet/buildPlan";
import { sayProblem } from "../../src/domain/wording";
import { createFakeWorkbook } from "./fakeWorkbook";
import { installStrictExcel } from "./strictExcel";
import { strictProbe } from "./strictProbe";

function started(excelApi = "1.20") {
  const workbook = createFakeWorkbook();
  const excel = installStrictExcel(workbook, excelApi);
  return { workbook, excel, probe: strictProbe(workbook, excel), port: createExcelPort() };
}
afterEach(() => {
  for (const name of ["Excel", "Office"]) Reflect.deleteProperty(globalThis, name);
});

const sheet: NewSheet = {
  name: "Requests",
  tableName: "Requests",
  headings: ["Lender", "Answer"],
  rows: [[null, null]],
  formats: [null, null],
  lists: ["=Lenders!$A$2:$A$500", "yes,no,part,waiting"],
};
const plan = (more: Partial<BuildPlan>): BuildPlan => ({
  addSheets: [],
  removeSheets: [],
  addColumns: [],
  removeColumns: [],
  ...more,
});

test("a column offers its list, and does not refuse what is not in it", async () => {
  const { workbook, probe, port } = started();
  await probe.addSheet("Lenders");
  expect((await port.build("Start", plan({ addSheets: [sheet] }))).ok).toBe(true);
  const { lists } = workbook.sheets[1]!;
  expect([0, 1].map((column) => lists.get(column)?.rule)).toEqual([
    { list: { inCellDropDown: true, source: "=Lenders!$A$2:$A$500" } },
    { list: { inCellDropDown: true, source: "yes,no,part,waiting" } },
  ]);
  expect(lists.get(1)?.errorAlert).toMatchObject({ showAlert: false });
});

test("a batch that fails half-way leaves no sheet behind", async () => {
  const { workbook, excel, probe, port } = started();
  await probe.addSheet("One");
  excel.writesBeforeFailure = 1;
  const two = plan({ addSheets: [sheet, { ...sheet, name: "Two", tableName: "Two" }] });
  const built = await port.build("Start", two);
  expect(!built.ok && sayProblem(built.problem)).toMatch(/^It was not possible to build it/);
  expect(workbook.sheets.map(({ name }) => name)).toEqual(["One"]);
});

test("an Excel that cannot widen a table says so and what to do", async () => {
  const { probe, port } = started("1.12");
  const sheetId = await probe.addSheet("Pieces");
  await probe.type(sheetId, 0, 0, "Piece");
  await probe.addTable(sheetId, "Pieces", 0, 0, 2, 1);
  const columns = { sheetId, tableName: "Pieces", row: 0, column: 1, rowCount: 2, headings: ["Due"], formats: [null] };
  const built = await port.build("Add", plan({ addColumns: [columns] }));
  expect(!built.ok && sayProblem(built.problem)).toBe(
    "It was not possible to change its columns (this Excel cannot widen a table for an add-in); type the headings beside the table.",
  );
});

test("an Excel that cannot lengthen a table says so and what to do", async () => {
  const { probe, port } = started("1.12");
  const sheetId = await probe.addSheet("Closed");
  await probe.type(sheetId, 0, 0, "Closed");
  await probe.addTable(sheetId, "ClosedDays", 0, 0, 2, 1);
  const rows = { sheetId, tableName: "ClosedDays", row: 2, column: 0, rows: [[46115]], formats: ["yyyy-mm-dd"] };
  const built = await port.build("Add", plan({ addRows: [rows] }));
  expect(!built.ok && sayProblem(built.problem)).toBe(
    "It was not possible to add rows (this Excel cannot lengthen a table for an add-in); type the rows below the table.",
  );
});

test("a table that cannot be widened leaves no headings beside it", async () => {
  const { workbook, probe, port } = started();
  const sheetId = await probe.addSheet("Pieces");
  await probe.type(sheetId, 0, 0, "Piece");
  await probe.addTable(sheetId, "Pieces", 0, 0, 2, 1);
  workbook.tablesRefuse = true;
  const columns = { sheetId, tableName: "Pieces", row: 0, column: 1, rowCount: 2, headings: ["Due"], formats: [null] };
  const built = await port.build("Add", plan({ addColumns: [columns] }));
  expect(!built.ok && sayProblem(built.problem)).toContain("the table is filtered");
  const sheet = await port.readSheet(sheetId);
  expect(sheet.ok && sheet.value.values).toEqual([["Piece"]]);
});
