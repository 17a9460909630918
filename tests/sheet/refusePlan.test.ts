import type { BuildPlan } from "../../src/sheet/buildPlan";
import { refusePlan } from "../../src/sheet/refusePlan";
import type { SheetSnapshot, WorkbookSnapshot } from "../../src/sheet/sheetSnapshot";

const sheet = (values: SheetSnapshot["values"], more: Partial<SheetSnapshot> = {}): SheetSnapshot => ({
  sheetId: "s0",
  name: "Loans",
  visible: true,
  isProtected: false,
  firstRow: 0,
  firstColumn: 0,
  values,
  formulas: values.map((row) => row.map(() => null)),
  tables: [],
  ...more,
});
const workbook = (one: SheetSnapshot): WorkbookSnapshot => ({ name: "Job", dateSystem: 1900, sheets: [one] });
const plan = (more: Partial<BuildPlan>): BuildPlan => ({
  addSheets: [],
  removeSheets: [],
  addColumns: [],
  removeColumns: [],
  ...more,
});
const table = { name: "Loans", row: 0, column: 0, rowCount: 2, columnCount: 1 };
const columns = {
  sheetId: "s0",
  tableName: "Loans",
  row: 0,
  column: 1,
  rowCount: 2,
  headings: ["Due"],
  formats: [null],
};
const reason = (one: SheetSnapshot, more: Partial<BuildPlan>) => {
  const refusal = refusePlan(workbook(one), plan(more));
  return refusal === null || refusal.ok ? null : refusal.problem;
};

test("blank cells beside the table take the columns", () => {
  expect(reason(sheet([["Piece"], ["coat"]], { tables: [table] }), { addColumns: [columns] })).toBeNull();
});

test("a formula that shows nothing is not blank", () => {
  const held = sheet(
    [
      ["Piece", null],
      ["coat", null],
    ],
    {
      tables: [table],
      formulas: [
        [null, null],
        [null, '=""'],
      ],
    },
  );
  expect(reason(held, { addColumns: [columns] })).toMatchObject({ reason: "cells-changed", facts: { cells: "B2" } });
});

test("rows that were typed under the table meanwhile count as well", () => {
  const grown = sheet(
    [
      ["Piece", null],
      ["coat", null],
      ["boots", "mine"],
    ],
    { tables: [{ ...table, rowCount: 3 }] },
  );
  expect(reason(grown, { addColumns: [columns] })).toMatchObject({ reason: "cells-changed", facts: { cells: "B3" } });
});

test("a table that was moved or widened meanwhile is not touched", () => {
  const moved = sheet([[null], ["Piece"]], { tables: [{ ...table, row: 1 }] });
  expect(reason(moved, { addColumns: [columns] })?.reason).toBe("host-refused");
  const renamed = sheet([["Piece"]], { tables: [{ ...table, name: "Other" }] });
  expect(reason(renamed, { addColumns: [columns] })?.reason).toBe("host-refused");
});

test("names are taken whatever their case, by a sheet, a table or the same plan", () => {
  const built = { name: "LOANS", tableName: "New", headings: ["A"], rows: [[null]], formats: [null], lists: [null] };
  const held = sheet([["Piece"]], { tables: [table] });
  expect(reason(held, { addSheets: [built] })?.reason).toBe("host-refused");
  expect(reason(held, { addSheets: [{ ...built, name: "New", tableName: "loans" }] })?.reason).toBe("host-refused");
  const twice = [
    { ...built, name: "New" },
    { ...built, name: "new", tableName: "Other" },
  ];
  expect(reason(held, { addSheets: twice })?.reason).toBe("host-refused");
});

const rows = { sheetId: "s0", tableName: "Loans", row: 2, column: 0, rows: [["boots"]], formats: [null] };

test("blank cells right below the table take the rows, and only the very rows are taken away again", () => {
  const before = sheet([["Piece"], ["coat"]], { tables: [table] });
  expect(reason(before, { addRows: [rows] })).toBeNull();
  const after = sheet([["Piece"], ["coat"], ["boots"]], { tables: [{ ...table, rowCount: 3 }] });
  expect(reason(after, { removeRows: [rows] })).toBeNull();
  const typed = sheet([["Piece"], ["coat"], ["mine"]], { tables: [{ ...table, rowCount: 3 }] });
  expect(reason(typed, { removeRows: [rows] })).toMatchObject({ reason: "cells-changed", facts: { cells: "A3" } });
});

test("rows are refused where the table has grown, is gone, or its sheet is protected or gone", () => {
  const grown = sheet([["Piece"], ["coat"], ["hat"]], { tables: [{ ...table, rowCount: 3 }] });
  expect(reason(grown, { addRows: [rows] })).toMatchObject({ reason: "host-refused" });
  expect(reason(sheet([["Piece"], ["coat"]]), { addRows: [rows] })).toMatchObject({ reason: "host-refused" });
  const locked = sheet([["Piece"], ["coat"]], { tables: [table], isProtected: true });
  expect(reason(locked, { addRows: [rows] })).toMatchObject({ reason: "sheet-protected" });
  expect(reason(locked, { addRows: [{ ...rows, sheetId: "s9" }] })).toMatchObject({ reason: "sheet-gone" });
});
