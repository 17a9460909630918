import { Workbook, type Worksheet } from "@cj-tech-master/excelts";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { saveWorkbookFile } from "../../../src/bench/save/saveWorkbookFile";
import type { SavingBook, SavingSheet } from "../../../src/bench/save/savingBook";
import { openBytes, untouched, withCells } from "./openSample";

/** A workbook with what a stylist's sheet may carry, written by a library and read back by it: the other side of each round trip. */
async function written(fill: (sheet: Worksheet) => void): Promise<Uint8Array> {
  const workbook = new Workbook();
  const sheet = workbook.addWorksheet("Pieces");
  sheet.addRows([
    ["Piece", "Lender", "State"],
    ["P1", "Ado & Fils", "out"],
    ["P2", "Maison Orla", "back"],
    ["P3", "Ado & Fils", "late"],
    ["P4", null, "out"],
  ]);
  fill(sheet);
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}

async function readBack(bytes: Uint8Array, name = "Pieces"): Promise<Worksheet> {
  const workbook = new Workbook();
  await workbook.xlsx.load(bytes);
  const sheet = workbook.getWorksheet(name);
  if (sheet === undefined) throw new Error(`no sheet ${name}`);
  return sheet;
}

const changed = (book: SavingBook, change: Partial<SavingSheet>): SavingBook => ({
  ...book,
  sheets: book.sheets.map((sheet, index) => (index === 0 ? { ...sheet, ...change } : sheet)),
});
const parts = (bytes: Uint8Array) =>
  Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]));

test("what nobody touched stays to the byte: frozen rows, lines, lists, formats, filters", async () => {
  const bytes = await written((sheet) => {
    sheet.views = [{ state: "frozen", xSplit: 1, ySplit: 1 }];
    sheet.getCell("A1").border = { bottom: { style: "double", color: { argb: "FF112233" } }, left: { style: "hair" } };
    sheet.getCell("C2").dataValidation = {
      type: "list",
      formulae: ['"out,back,late"'],
      allowBlank: true,
      showErrorMessage: true,
    };
    sheet.addConditionalFormatting({
      ref: "A2:C5",
      rules: [{ type: "expression", formulae: ['$C2="late"'], priority: 1, style: { font: { bold: true } } }],
    });
    sheet.autoFilter = "A1:C5";
  });
  const file = await openBytes(bytes);
  expect(parts(saveWorkbookFile(file, untouched(file)))).toEqual(
    Object.fromEntries(Object.entries(file.parts).map(([path, content]) => [path, strFromU8(content)])),
  );
});

test("rows and columns frozen, changed or set free in the grid are so in the file", async () => {
  for (const [before, freeze, expected] of [
    [undefined, { rows: 1, columns: 0 }, { state: "frozen", ySplit: 1 }],
    [
      { state: "frozen", ySplit: 1 },
      { rows: 2, columns: 3 },
      { state: "frozen", ySplit: 2, xSplit: 3, topLeftCell: "D3" },
    ],
  ] as const) {
    const file = await openBytes(await written((sheet) => before && (sheet.views = [{ ...before }])));
    const sheet = await readBack(saveWorkbookFile(file, changed(untouched(file), { freeze })));
    expect(sheet.views[0]).toMatchObject(expected);
  }
  const file = await openBytes(await written((sheet) => (sheet.views = [{ state: "frozen", ySplit: 1 }])));
  const free = saveWorkbookFile(file, changed(untouched(file), { freeze: { rows: 0, columns: 0 } }));
  expect(parts(free)["xl/worksheets/sheet1.xml"]).not.toContain("<pane");
});

test("a sheet that was added keeps its frozen headings, its filter and the rows that it hides", async () => {
  const file = await openBytes(await written(() => undefined));
  const book = untouched(file);
  const [first] = book.sheets;
  if (first === undefined) throw new Error("no sheet");
  const filter = {
    reference: "A1:C5",
    columns: [{ offset: 1, values: ["Ado & Fils"], isBlankShown: true, tests: [], isEveryTest: false }],
  };
  const added = {
    ...first,
    sheetId: "new",
    name: "Asked",
    freeze: { rows: 1, columns: 0 },
    filter,
    filteredRows: new Set([2]),
  };
  const bytes = saveWorkbookFile(file, { ...book, sheets: [...book.sheets, added] });
  const sheet = await readBack(bytes, "Asked");
  expect(sheet.views[0]).toMatchObject({ state: "frozen", ySplit: 1 });
  expect([2, 3, 4, 5].filter((row) => sheet.getRow(row).hidden)).toEqual([3]);
  // Opened again the filter is the grid's own, and clearing it shows the row.
  const again = await openBytes(bytes);
  const sheetId = again.book.sheets.find(({ name }) => name === "Asked")?.sheetId ?? "";
  expect(again.filters.get(sheetId)).toEqual({ filter, ofTables: new Map(), rows: new Set([2]) });
  expect(again.data.sheets[sheetId]?.rowData?.[2]).not.toMatchObject({ hd: 1 });
});

test("lines around cells are shown as the file has them, and changed ones are saved without the others", async () => {
  const bytes = await written((sheet) => {
    sheet.getCell("A1").border = { bottom: { style: "double", color: { argb: "FF112233" } }, left: { style: "hair" } };
  });
  const file = await openBytes(bytes);
  const style = file.data.styles[String(file.data.sheets["1"]?.cellData?.[0]?.[0]?.s)];
  expect(style).toMatchObject({ bd: { b: { s: 7, cl: { rgb: "#112233" } }, l: { s: 2 } } });
  const book = untouched(file);
  const look = book.sheets[0]?.state.get(0)?.get(0)?.look;
  if (look === undefined) throw new Error("no look");
  const lines = { ...look.lines, left: null, top: "thick #AA0000" };
  const sheet = await readBack(saveWorkbookFile(file, withCells(book, "Pieces", { A1: { look: { ...look, lines } } })));
  expect(sheet.getCell("A1").border).toEqual({
    top: { style: "thick", color: { argb: "FFAA0000" } },
    bottom: { style: "double", color: { argb: "FF112233" } },
  });
  expect(sheet.getCell("B1").border).toBeUndefined();
});

test("a list that was moved or taken out is so in the file, a new one is there, and other validations stay", async () => {
  const bytes = await written((sheet) => {
    sheet.getCell("C2").dataValidation = {
      type: "list",
      formulae: ['"out,back"'],
      showErrorMessage: true,
      error: "One of the two.",
      showInputMessage: true,
      prompt: "Where is it?",
    };
    sheet.getCell("B2").dataValidation = { type: "list", formulae: ["$E$1:$E$3"] };
    sheet.getCell("A2").dataValidation = { type: "textLength", operator: "lessThan", formulae: [9] };
  });
  const file = await openBytes(bytes);
  const lists = [
    { reference: "C2:C5", source: "out,back", isStrict: true },
    { reference: "D2:D5", source: 'yes,"no"', isStrict: false },
  ];
  const { dataValidations } = await readBack(saveWorkbookFile(file, changed(untouched(file), { lists })));
  const byPlace = dataValidations.model as Record<string, Record<string, unknown>>;
  expect(Object.keys(byPlace).sort()).toEqual(["A2", "range:C2:C5", "range:D2:D5"]);
  expect(byPlace["range:C2:C5"]).toMatchObject({ type: "list", error: "One of the two.", prompt: "Where is it?" });
  expect(byPlace["range:D2:D5"]).toMatchObject({ formulae: ['"yes,""no"""'] });
  expect(byPlace["A2"]).toMatchObject({ type: "textLength" });
});

test("a list that the file does not enforce refuses nothing in the grid", async () => {
  const file = await openBytes(
    await written((sheet) => (sheet.getCell("C2").dataValidation = { type: "list", formulae: ['"out,back"'] })),
  );
  expect(untouched(file).sheets[0]?.lists).toEqual([{ reference: "C2:C2", source: "out,back", isStrict: false }]);
});

test("a conditional format that was moved is so in the file with all it was, a new one is there, and those not shown stay", async () => {
  const bytes = await written((sheet) => {
    sheet.addConditionalFormatting({
      ref: "A2:C5",
      rules: [
        {
          type: "expression",
          formulae: ['$C2="late"'],
          priority: 2,
          style: { font: { italic: true, color: { argb: "FFCC0000" } } },
        },
      ],
    });
    sheet.addConditionalFormatting({
      ref: "A2:A5",
      rules: [
        {
          type: "colorScale",
          priority: 1,
          cfvo: [{ type: "min" }, { type: "max" }],
          color: [{ argb: "FFFFFFFF" }, { argb: "FF00FF00" }],
        },
      ],
    });
  });
  const file = await openBytes(bytes);
  const book = untouched(file);
  const [held] = book.sheets[0]?.formats ?? [];
  if (held === undefined) throw new Error("no format");
  const formats = [
    { ...held, reference: "A3:C9" },
    {
      id: "pasted",
      reference: "E2:E4",
      formula: '=TACK.DAYSLATE(E2,"",F2)>0',
      style: { bold: true, ink: "#0000FF", background: "#FFEE00" },
    },
  ];
  const sheet = await readBack(saveWorkbookFile(file, changed(book, { formats })));
  const rules = sheet.conditionalFormattings.flatMap(({ ref, rules: of }) => of.map((rule) => [ref, rule] as const));
  expect(rules.map(([ref, { type }]) => [ref, type])).toEqual([
    ["A2:A5", "colorScale"],
    ["A3:C9", "expression"],
    ["E2:E4", "expression"],
  ]);
  expect(rules[1]?.[1]).toMatchObject({ formulae: ['$C2="late"'], style: { font: { italic: true } } });
  expect(rules[2]?.[1]).toMatchObject({
    formulae: ['_xldudf_TACK_DAYSLATE(E2,"",F2)>0'],
    style: { font: { bold: true, color: { argb: "FF0000FF" } }, fill: { bgColor: { argb: "FFFFEE00" } } },
  });
});

test("a filter set in the grid hides the same rows in the file, and one that was cleared hides none", async () => {
  const file = await openBytes(await written(() => undefined));
  const filter = {
    reference: "A1:C5",
    columns: [
      { offset: 1, values: ["Ado & Fils"], isBlankShown: false, tests: [], isEveryTest: false },
      {
        offset: 2,
        values: null,
        isBlankShown: false,
        tests: [
          { operator: "notEqual" as const, value: "back" },
          { operator: "equal" as const, value: "*t*" },
        ],
        isEveryTest: true,
      },
    ],
  };
  const bytes = saveWorkbookFile(file, changed(untouched(file), { filter, filteredRows: new Set([2, 4]) }));
  const xml = parts(bytes)["xl/worksheets/sheet1.xml"] ?? "";
  expect(xml).toContain(
    '<autoFilter ref="A1:C5"><filterColumn colId="1"><filters><filter val="Ado &amp; Fils"/></filters></filterColumn>' +
      '<filterColumn colId="2"><customFilters and="1"><customFilter operator="notEqual" val="back"/><customFilter val="*t*"/></customFilters></filterColumn></autoFilter>',
  );
  const sheet = await readBack(bytes);
  expect([2, 3, 4, 5].filter((row) => sheet.getRow(row).hidden)).toEqual([3, 5]);
  const values = { ...filter, columns: filter.columns.slice(0, 1) };
  const filtered = await openBytes(
    saveWorkbookFile(file, changed(untouched(file), { filter: values, filteredRows: new Set([2, 4]) })),
  );
  expect(filtered.filters.get("1")?.filter).toEqual(values);
  const cleared = saveWorkbookFile(filtered, changed(untouched(filtered), { filter: null, filteredRows: new Set() }));
  expect(parts(cleared)["xl/worksheets/sheet1.xml"]).not.toMatch(/autoFilter|hidden=/);
});

test("a table's filter is taken over where the grid hides the very same rows, and saved with the table", async () => {
  const bytes = await written((sheet) => {
    sheet.addTable({
      name: "Rail",
      ref: "F1",
      headerRow: true,
      columns: [
        { name: "Piece", filterButton: true },
        { name: "State", filterButton: true },
      ],
      rows: [["A", "out"], ["B", "late"], ["C", "out"]], // prettier-ignore
    });
  });
  const plain = await openBytes(bytes);
  const filters = [{ offset: 1, values: ["late"], isBlankShown: false, tests: [], isEveryTest: false }];
  const [pieces] = untouched(plain).sheets;
  const tables = (pieces?.tables ?? []).map((table) => ({ ...table, filters }));
  const saved = saveWorkbookFile(plain, changed(untouched(plain), { tables, filteredRows: new Set([1, 3]) }));
  const again = await openBytes(saved);
  expect(again.filters.get("1")).toEqual({
    filter: null,
    ofTables: new Map([["Rail", filters]]),
    rows: new Set([1, 3]),
  });
  const kept = again.data.resources?.find(({ name }) => name === "SHEET_TABLE_PLUGIN")?.data ?? "";
  expect(kept).toContain('"tableColumnFilterList":[null,{"filterType":"manual","values":["late"]}]');
  // A row that somebody shows by hand no longer fits the filter: the file's own word stays, and its rows as they are.
  const shown = Object.fromEntries(
    Object.entries(unzipSync(saved)).map(([path, content]) => [
      path,
      path.endsWith("sheet1.xml") ? strToU8(strFromU8(content).replace(/(<row r="4"[^>]*) hidden="1"/, "$1")) : content,
    ]),
  );
  const apart = await openBytes(zipSync(shown));
  expect(apart.filters.get("1")?.ofTables.size).toBe(0);
  expect(apart.data.sheets["1"]?.rowData?.[1]).toMatchObject({ hd: 1 });
  expect(parts(saveWorkbookFile(apart, untouched(apart)))).toEqual(
    Object.fromEntries(Object.entries(apart.parts).map(([path, content]) => [path, strFromU8(content)])),
  );
});
