import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { strFromU8, unzipSync } from "fflate";
import type { Bench } from "../../src/bench/startBench";
import { openBench, type OpenBench } from "./openBench";
import { settled } from "./settled";
import { type } from "./type";

declare const bench: Bench;

let open: OpenBench;
beforeAll(async () => {
  const folder = join(__dirname, "../../node_modules/.cache/tackstitch-contract");
  open = await openBench({ entry: "tests/browser/contractPage.ts", folder });
}, 120_000);
afterAll(() => open.close());
jest.setTimeout(90_000);

/** A sheet with frozen headings, lines, a list, a format and a filter that hides a row, and a table beside it. */
async function workbook(): Promise<Uint8Array> {
  const book = new Workbook();
  const sheet = book.addWorksheet("Pieces");
  sheet.addRows([
    ["Piece", "Lender", "Value", "State"],
    ["P1", "Ado & Fils", 100, "out"],
    ["P2", "Maison Orla", 200, "late"],
    ["P3", "Ado & Fils", 300, "out"],
  ]);
  sheet.views = [{ state: "frozen", ySplit: 1 }];
  sheet.getCell("A1").border = { bottom: { style: "double", color: { argb: "FF112233" } } };
  sheet.getCell("D2").dataValidation = { type: "list", formulae: ['"out,late,back"'], showErrorMessage: true };
  sheet.addConditionalFormatting({
    ref: "A2:D4",
    rules: [{ type: "expression", formulae: ['$D2="late"'], priority: 1, style: { font: { bold: true } } }],
  });
  sheet.getRow(3).hidden = true;
  const lenders = book.addWorksheet("Rail");
  lenders.addTable({
    name: "Rail",
    ref: "A1",
    headerRow: true,
    columns: [
      { name: "Piece", filterButton: true },
      { name: "Place", filterButton: true },
    ],
    rows: [["P1", "van"], ["P2", "studio"], ["P3", "van"]], // prettier-ignore
  });
  const bytes = new Uint8Array(await book.xlsx.writeBuffer());
  return bytes;
}

async function saved(): Promise<Uint8Array> {
  const [file] = await Promise.all([
    open.page.waitForEvent("download"),
    open.page.getByRole("button", { name: "Save", exact: true }).click(),
  ]);
  return new Uint8Array(readFileSync(await file.path()));
}

async function sheetOf(bytes: Uint8Array, name: string): Promise<Worksheet> {
  const book = new Workbook();
  await book.xlsx.load(bytes);
  const sheet = book.getWorksheet(name);
  if (sheet === undefined) throw new Error(`no sheet ${name}`);
  return sheet;
}
const parts = (bytes: Uint8Array) =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]));

test("what the grid shows of lines, lists, formats and frozen rows is saved to the byte while nobody touches it", async () => {
  const bytes = await workbook();
  await open.page
    .locator("#file")
    .setInputFiles({ name: "looks.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
  await open.page.waitForFunction(() => document.getElementById("file-name")?.textContent === "looks.xlsx");
  await settled(open.page);
  expect(parts(await saved())).toEqual(parts(bytes));
  await type(open.page, "Pieces", "C2", "150");
  const after = parts(await saved());
  const changed = Object.keys(after).filter((path) => after[path] !== parts(bytes)[path]);
  expect(changed.sort()).toEqual(["xl/workbook.xml", "xl/worksheets/sheet1.xml"]);
});

test("filters, frozen rows, a list, a format and lines that are set in the grid are in the saved file", async () => {
  await open.page.evaluate(async () => {
    const book = bench.grid.api.getActiveWorkbook();
    const [pieces, rail] = [book?.getSheetByName("Pieces"), book?.getSheetByName("Rail")];
    if (!book || !pieces || !rail) throw new Error("no sheet");
    pieces.setFrozenRows(2);
    pieces
      .getRange("F2:F4")
      .setBorder(bench.grid.api.Enum.BorderType.ALL, bench.grid.api.Enum.BorderStyleTypes.MEDIUM, "#AA0000");
    const list = bench.grid.api.newDataValidation().requireValueInList(["van", "studio"]).build();
    rail.getRange("B2:B4").setDataValidation(list);
    const [format] = pieces.getConditionalFormattingRules();
    if (format === undefined) throw new Error("no format");
    pieces.setConditionalFormattingRule(format.cfId, { ...format, ranges: [pieces.getRange("A2:E9").getRange()] });
    const filter = pieces.getRange("A1:D4").createFilter();
    filter?.setColumnFilterCriteria(1, { colId: 1, filters: { filters: ["Ado & Fils"] } });
    const table = book.getTableList().find(({ name }) => name === "Rail");
    await book.setTableFilter(table?.id ?? "", 1, { filterType: "manual" as never, values: ["studio"] });
  });
  await settled(open.page);
  const bytes = await saved();
  const [pieces, rail] = [await sheetOf(bytes, "Pieces"), await sheetOf(bytes, "Rail")];
  expect(pieces.views[0]).toMatchObject({ state: "frozen", ySplit: 2 });
  expect(pieces.getCell("F3").border).toMatchObject({ left: { style: "medium", color: { argb: "FFAA0000" } } });
  expect(pieces.getCell("A1").border).toMatchObject({ bottom: { style: "double" } });
  expect(pieces.conditionalFormattings.map(({ ref }) => ref)).toEqual(["A2:E9"]);
  expect(Object.entries(rail.dataValidations.model)).toMatchObject([["range:B2:B4", { formulae: ['"van,studio"'] }]]);
  expect(parts(bytes)["xl/worksheets/sheet1.xml"]).toContain(
    '<filterColumn colId="1"><filters><filter val="Ado &amp; Fils"/></filters></filterColumn>',
  );
  expect(parts(bytes)["xl/tables/table1.xml"]).toContain('<filterColumn colId="1"><filters><filter val="studio"/>');
  expect([2, 3, 4].filter((row) => pieces.getRow(row).hidden)).toEqual([3]);
  expect([2, 3, 4].filter((row) => rail.getRow(row).hidden)).toEqual([2, 4]);
});

test("filters that a file has hide their rows in the grid, and clearing them shows the rows, also in the saved file", async () => {
  const bytes = await saved();
  await open.page
    .locator("#file")
    .setInputFiles({ name: "again.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from(bytes) });
  await open.page.waitForFunction(() => document.getElementById("file-name")?.textContent === "again.xlsx");
  await settled(open.page);
  const hidden = await open.page.evaluate(() => {
    const [pieces, rail] = ["Pieces", "Rail"].map((name) =>
      bench.grid.api.getActiveWorkbook()?.getSheetByName(name)?.getSheet(),
    );
    return [pieces, rail].map((sheet) => [1, 2, 3].filter((row) => sheet?.getRowVisible(row) === false));
  });
  // Whoever shows row 3 of Pieces by hand keeps it hidden by nothing but the filter, so the grid takes the filter over.
  expect(hidden).toEqual([[2], [1, 3]]);
  expect(parts(await saved())).toEqual(parts(bytes));
  await open.page.evaluate(async () => {
    const book = bench.grid.api.getActiveWorkbook();
    book?.getSheetByName("Pieces")?.getFilter()?.remove();
    const table = book?.getTableList().find(({ name }) => name === "Rail");
    await book?.setTableFilter(table?.id ?? "", 1, undefined);
  });
  await settled(open.page);
  const cleared = await saved();
  expect(parts(cleared)["xl/worksheets/sheet1.xml"]).not.toMatch(/autoFilter|hidden="1"/);
  expect(parts(cleared)["xl/worksheets/sheet2.xml"]).not.toMatch(/hidden="1"/);
  expect(parts(cleared)["xl/tables/table1.xml"]).not.toContain("<filters>");
});
