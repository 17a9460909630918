import type { BuildPlan, NewColumns, NewRows, NewSheet } from "../../../src/sheet/buildPlan";
import type { SheetPort } from "../../../src/sheet/SheetPort";
import type { SheetSnapshot } from "../../../src/sheet/sheetSnapshot";
import type { ContractCase, Probe } from "./contractCase";
import { same, must, refused, cellOf, read } from "./contractSteps";

const NOTHING: BuildPlan = { addSheets: [], removeSheets: [], addColumns: [], removeColumns: [] };

const newSheet = (name: string, tableName: string): NewSheet => ({
  name,
  tableName,
  headings: ["Piece", "Due", "Answer"],
  rows: [
    ["007", 46086, "yes"],
    [null, null, null],
  ],
  formats: [null, "yyyy-mm-dd", null],
  lists: [null, null, "yes,no"],
});

async function sheetNamed(port: SheetPort, name: string): Promise<SheetSnapshot | undefined> {
  return must(await port.readWorkbook(), "reading the workbook").sheets.find((sheet) => sheet.name === name);
}

/** A table of two rows with a heading that is to get columns beside it. */
async function tableFor(probe: Probe, sheetName: string, tableName: string): Promise<NewColumns> {
  const sheetId = await probe.addSheet(sheetName);
  await probe.type(sheetId, 1, 1, "Piece");
  await probe.type(sheetId, 1, 2, "Lender");
  await probe.type(sheetId, 2, 1, "coat");
  await probe.type(sheetId, 3, 1, "boots");
  await probe.addTable?.(sheetId, tableName, 1, 1, 3, 2);
  const headings = ["Due", "Back"];
  return { sheetId, tableName, row: 1, column: 3, rowCount: 3, headings, formats: ["yyyy-mm-dd", null] };
}
/** The same table, with two rows to go below it. */
async function rowsFor(probe: Probe, sheetName: string, tableName: string): Promise<NewRows> {
  const { sheetId } = await tableFor(probe, sheetName, tableName);
  const rows = [
    ["007", 46086],
    ["hat", null],
  ];
  return { sheetId, tableName, row: 4, column: 1, rows, formats: [null, "yyyy-mm-dd"] };
}
const columnsOf = (sheet: SheetSnapshot) => sheet.tables.map(({ name, columnCount }) => [name, columnCount]);

/** What a port promises about building sheets and columns. */
export const buildingCases: readonly ContractCase[] = [
  {
    title: "builds sheets with a table, rows and number formats, takes them away again, and builds them again",
    async run(port, probe) {
      await probe.addSheet("Contract beside");
      const plan = {
        ...NOTHING,
        addSheets: [newSheet("ContractBuilt", "ContractBuilt"), newSheet("Contract built two", "ContractTwo")],
      };
      const receipt = must(await port.build("Build", plan), "building");
      const sheet = await sheetNamed(port, "ContractBuilt");
      if (sheet === undefined) throw new Error("the sheet is not there");
      same(sheet.tables, [{ name: "ContractBuilt", row: 0, column: 0, rowCount: 3, columnCount: 3 }], "the table");
      same(
        [0, 1, 2].map((column) => cellOf(sheet, 0, column)),
        ["Piece", "Due", "Answer"],
        "the headings",
      );
      same(
        [0, 1, 2].map((column) => cellOf(sheet, 1, column)),
        ["007", 46086, "yes"],
        "the row",
      );
      same(await probe.formatOf(sheet.sheetId, 1, 1), "yyyy-mm-dd", "the number format");
      const back = must(await port.restore(receipt), "taking them away");
      same(await sheetNamed(port, "ContractBuilt"), undefined, "the first sheet");
      same(await sheetNamed(port, "Contract built two"), undefined, "the second sheet");
      const again = must(await port.restore(back), "building them again");
      same(
        (await sheetNamed(port, "Contract built two"))?.tables.map(({ name }) => name),
        ["ContractTwo"],
        "the second table",
      );
      must(await port.restore(again), "taking them away again");
    },
  },
  {
    title: "does not take away a sheet on which somebody has typed, and names the cells",
    async run(port, probe) {
      await probe.addSheet("Contract beside typed");
      const plan = { ...NOTHING, addSheets: [newSheet("Contract typed on", "ContractTypedOn")] };
      const receipt = must(await port.build("Build", plan), "building");
      const sheetId = (await sheetNamed(port, "Contract typed on"))?.sheetId ?? "";
      await probe.type(sheetId, 2, 0, "mine");
      refused(await port.restore(receipt), "cells-changed", "A3");
      same(cellOf(await read(port, sheetId), 2, 0), "mine", "what was typed");
    },
  },
  {
    title: "builds nothing where a name is taken",
    async run(port, probe) {
      await probe.addSheet("Contract Taken");
      const plan = {
        ...NOTHING,
        addSheets: [newSheet("Contract free", "ContractFree"), newSheet("contract taken", "ContractT")],
      };
      refused(await port.build("Build", plan), "host-refused", "contract taken");
      same(await sheetNamed(port, "Contract free"), undefined, "the sheet whose name was free");
    },
  },
  {
    title: "adds columns at the right of a table, which grows, and takes them away again",
    needs: ["addTable", "widens"],
    async run(port, probe) {
      const columns = await tableFor(probe, "Contract columns", "ContractColumns");
      const receipt = must(await port.build("Add", { ...NOTHING, addColumns: [columns] }), "adding");
      const sheet = await read(port, columns.sheetId);
      same([cellOf(sheet, 1, 3), cellOf(sheet, 1, 4)], ["Due", "Back"], "the headings");
      same(columnsOf(sheet), [["ContractColumns", 4]], "the table");
      same(await probe.formatOf(columns.sheetId, 2, 3), "yyyy-mm-dd", "the number format");
      must(await port.restore(receipt), "taking them away");
      const after = await read(port, columns.sheetId);
      same([cellOf(after, 1, 3), cellOf(after, 1, 4)], [null, null], "the headings after");
      same([columnsOf(after), cellOf(after, 2, 1)], [[["ContractColumns", 2]], "coat"], "the table after");
    },
  },
  {
    title: "adds no columns where a cell is filled, and names it",
    needs: ["addTable"],
    async run(port, probe) {
      const columns = await tableFor(probe, "Contract filled", "ContractFilled");
      await probe.type(columns.sheetId, 3, 4, "mine");
      refused(await port.build("Add", { ...NOTHING, addColumns: [columns] }), "cells-changed", "E4");
      const sheet = await read(port, columns.sheetId);
      same([cellOf(sheet, 1, 3), columnsOf(sheet)], [null, [["ContractFilled", 2]]], "the sheet");
    },
  },
  {
    title: "does not take away columns in which somebody has typed",
    needs: ["addTable", "widens"],
    async run(port, probe) {
      const columns = await tableFor(probe, "Contract kept columns", "ContractKept");
      const receipt = must(await port.build("Add", { ...NOTHING, addColumns: [columns] }), "adding");
      await probe.type(columns.sheetId, 2, 4, "mine");
      refused(await port.restore(receipt), "cells-changed", "E3");
      same(cellOf(await read(port, columns.sheetId), 2, 4), "mine", "what was typed");
    },
  },
  {
    title: "adds headings beside an area without a name",
    async run(port, probe) {
      const { sheetId, ...rest } = await tableFor({ ...probe, addTable: undefined }, "Contract area", "");
      const columns = { ...rest, sheetId, tableName: null };
      const receipt = must(await port.build("Add", { ...NOTHING, addColumns: [columns] }), "adding");
      same(cellOf(await read(port, sheetId), 1, 4), "Back", "the heading");
      must(await port.restore(receipt), "taking them away");
      same(cellOf(await read(port, sheetId), 1, 4), null, "the heading after");
    },
  },
  {
    title: "adds no columns on a protected sheet, nor on one that is gone",
    needs: ["protectSheet"],
    async run(port, probe) {
      const { sheetId, ...rest } = await tableFor({ ...probe, addTable: undefined }, "Contract locked", "");
      const columns = { ...rest, sheetId, tableName: null };
      await probe.protectSheet?.(sheetId);
      refused(await port.build("Add", { ...NOTHING, addColumns: [columns] }), "sheet-protected", "Contract locked");
      const gone = { ...columns, sheetId: "no such sheet" };
      refused(await port.build("Add", { ...NOTHING, addColumns: [gone] }), "sheet-gone");
    },
  },
  {
    title: "adds no columns into a merged block, and names it",
    needs: ["merge"],
    async run(port, probe) {
      const { sheetId, ...rest } = await tableFor({ ...probe, addTable: undefined }, "Contract merged beside", "");
      await probe.merge?.(sheetId, 2, 3, 2, 2);
      const columns = { ...rest, sheetId, tableName: null };
      refused(await port.build("Add", { ...NOTHING, addColumns: [columns] }), "cells-merged", "D3");
      same(cellOf(await read(port, sheetId), 1, 3), null, "the heading");
    },
  },
  {
    title: "adds rows at the foot of a table, which grows, and takes them away again",
    needs: ["addTable", "widens"],
    async run(port, probe) {
      const rows = await rowsFor(probe, "Contract rows", "ContractRows");
      const receipt = must(await port.build("Add", { ...NOTHING, addRows: [rows] }), "adding");
      const sheet = await read(port, rows.sheetId);
      same([cellOf(sheet, 4, 1), cellOf(sheet, 4, 2), cellOf(sheet, 5, 1)], ["007", 46086, "hat"], "the cells");
      same(
        sheet.tables.map(({ rowCount }) => rowCount),
        [5],
        "the table",
      );
      same(await probe.formatOf(rows.sheetId, 4, 2), "yyyy-mm-dd", "the number format");
      const back = must(await port.restore(receipt), "taking them away");
      const after = await read(port, rows.sheetId);
      same([cellOf(after, 4, 1), cellOf(after, 5, 1), cellOf(after, 3, 1)], [null, null, "boots"], "the cells after");
      same(
        after.tables.map(({ rowCount }) => rowCount),
        [3],
        "the table after",
      );
      must(await port.restore(back), "adding them again");
      await probe.type(rows.sheetId, 4, 1, "mine");
      refused(await port.restore(receipt), "cells-changed", "B5");
      same(cellOf(await read(port, rows.sheetId), 4, 1), "mine", "what was typed");
    },
  },
  {
    title: "adds no rows where a cell below the table is filled, and names it",
    needs: ["addTable"],
    async run(port, probe) {
      const rows = await rowsFor(probe, "Contract rows filled", "ContractRowsFilled");
      await probe.type(rows.sheetId, 5, 2, "mine");
      refused(await port.build("Add", { ...NOTHING, addRows: [rows] }), "cells-changed", "C6");
      const sheet = await read(port, rows.sheetId);
      same([cellOf(sheet, 4, 1), sheet.tables.map(({ rowCount }) => rowCount)], [null, [3]], "the sheet");
    },
  },
];
