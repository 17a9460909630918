import { strFromU8, unzipSync } from "fflate";
import type { OpenedFile } from "../../../src/bench/file/openWorkbookFile";
import { openedTables } from "../../../src/bench/file/openedTables";
import { saveWorkbookFile } from "../../../src/bench/save/saveWorkbookFile";
import type { SavingSheet } from "../../../src/bench/save/savingBook";
import { openBytes, openSample, untouched, withCells } from "./openSample";

const LOANS = "xl/worksheets/sheet2.xml";
const TRY = "Try here";
const sheetIn = ({ book }: Pick<OpenedFile, "book">, named: string) => book.sheets.find(({ name }) => name === named)!;
const text = (parts: Readonly<Record<string, Uint8Array>>, path: string) => strFromU8(parts[path] ?? new Uint8Array());

/** Parts that differ, by path. */
function changedParts(
  before: Readonly<Record<string, Uint8Array>>,
  after: Readonly<Record<string, Uint8Array>>,
): string[] {
  const paths = new Set([...Object.keys(before), ...Object.keys(after)]);
  return [...paths].filter((path) => text(before, path) !== text(after, path)).sort();
}

test("a workbook that nobody touched is saved with every part as it was", async () => {
  const file = await openSample();
  const saved = unzipSync(saveWorkbookFile(file, untouched(file)));
  expect(changedParts(file.parts, saved)).toEqual([]);
});

test("a typed number changes its own cell and the wish to calculate anew, nothing else in the file", async () => {
  const file = await openSample();
  const saved = unzipSync(saveWorkbookFile(file, withCells(untouched(file), "Loans", { I5: { value: 645 } })));
  expect(changedParts(file.parts, saved).filter((path) => path !== "xl/workbook.xml")).toEqual([LOANS]);
  const [before, after] = [text(file.parts, LOANS), text(saved, LOANS)];
  // The cell keeps its format, whatever the format's number is in the sample.
  const [, held = "", value = ""] = /(<c r="I5" s="\d+"><v>)(\d+)<\/v><\/c>/.exec(before) ?? [];
  expect(after).toContain(`${held}645</v></c>`);
  const withoutSpans = (xml: string) => xml.replace(/<row r="5" spans="1:\d+">/, '<row r="5">');
  expect(after.replace(`${held}645</v></c>`, `${held}${value}</v></c>`)).toBe(withoutSpans(before));
  expect(text(saved, "xl/workbook.xml")).toMatch(/<calcPr [^>]*fullCalcOnLoad="1"/);
});

test("what was saved is there when it is opened again: number, text, formula, blank, truth value, error", async () => {
  const file = await openSample();
  const changed = withCells(untouched(file), TRY, {
    A20: { value: 0.25 },
    A21: { value: '007 <&> "quoted" _x0041_ \u0007 ünï', formula: null },
    A22: { value: true },
    A23: { value: 12, formula: "=TACK.DAYSLATE(A20,A21)" },
    A24: { value: { error: "#N/A" } },
    A4: { value: null },
  });
  const again = await openBytes(saveWorkbookFile(file, changed));
  const cells = again.data.sheets[sheetIn(again, TRY).sheetId]?.cellData;
  expect(cells?.[19]?.[0]).toMatchObject({ v: 0.25 });
  expect(cells?.[20]?.[0]?.v).toContain('007 <&> "quoted"');
  expect(cells?.[21]?.[0]).toMatchObject({ v: 1, t: 3 });
  expect(cells?.[22]?.[0]).toMatchObject({ f: "=TACK.DAYSLATE(A20,A21)", v: 12 });
  expect(cells?.[23]?.[0]).toMatchObject({ v: "#N/A" });
  expect(cells?.[3]?.[0]?.v).toBeUndefined();
});

test("a formula that spills is kept with its area and the mark without which Excel shows one cell of it", async () => {
  const file = await openSample();
  const changed = withCells(untouched(file), TRY, {
    A9: { value: "Lender", formula: "=TACK.LENDERTOTALS(Loans[#All],AsOf)", spill: "A9:B10" },
    B9: { value: "Pieces out", spilled: true },
    A10: { value: "Maison Quillet", spilled: true },
    B10: { value: 5, spilled: true },
  });
  const saved = unzipSync(saveWorkbookFile(file, changed));
  const sheet = text(saved, sheetIn(file, TRY).path!);
  expect(sheet).toContain(
    '<c r="A9" t="str" cm="1"><f t="array" ref="A9:B10">_xldudf_TACK_LENDERTOTALS(Loans[#All],AsOf)</f><v>Lender</v></c>',
  );
  expect(sheet).toContain('<c r="B10"><v>5</v></c>');
  expect(text(saved, "xl/metadata.xml")).toContain("XLDAPR");
  const again = await openBytes(saveWorkbookFile(file, changed));
  const cells = again.data.sheets[sheetIn(again, TRY).sheetId]?.cellData;
  expect(cells?.[8]?.[0]?.f).toBe("=TACK.LENDERTOTALS(Loans[#All],AsOf)");
  // What it spilled is not in its way when it is opened again.
  expect(cells?.[9]?.[1]?.v).toBeUndefined();
});

test("a cell that looks different gets a format of its own, and its neighbours keep theirs", async () => {
  const file = await openSample();
  const look = {
    pattern: "yyyy-mm-dd",
    bold: true,
    italic: false,
    ink: null,
    background: "#FFEE00",
    wrap: true,
    across: null,
    lines: { left: null, right: null, top: null, bottom: null },
  };
  const changed = withCells(untouched(file), TRY, { A20: { value: 46086, look }, A21: { value: 46087, look } });
  const again = await openBytes(saveWorkbookFile(file, changed));
  const sheet = again.data.sheets[sheetIn(again, TRY).sheetId]?.cellData;
  const style = again.data.styles[String(sheet?.[19]?.[0]?.s)];
  expect(style).toMatchObject({ n: { pattern: "yyyy-mm-dd" }, bl: 1, bg: { rgb: "#FFEE00" }, tb: 3 });
  expect(sheet?.[20]?.[0]?.s).toBe(sheet?.[19]?.[0]?.s);
  const [before, after] = [file, again].map((opened) => opened.data.sheets["2"]?.cellData?.[4]?.[8]);
  expect(again.data.styles[String(after?.s)]).toEqual(file.data.styles[String(before?.s)]);
});

test("a heading typed anew in a table renames its column, since Excel repairs a file where the two disagree", async () => {
  const file = await openSample();
  const book = withCells(untouched(file), "Loans", { G4: { value: "Shade" } });
  const sheets = book.sheets.map((sheet) => ({
    ...sheet,
    tables: sheet.tables.map((table) => ({
      ...table,
      headings: table.headings.map((name) => (name === "Colour" ? "Shade" : name)),
    })),
  }));
  const saved = unzipSync(saveWorkbookFile(file, { ...book, sheets }));
  const table = Object.keys(saved)
    .map((path) => text(saved, path))
    .find((xml) => xml.includes('displayName="Loans"'));
  expect(table).toContain('name="Shade"');
  expect(table).not.toContain('name="Colour"');
});

test("rows put in move what stands below, the table, the frozen names and nothing above", async () => {
  const file = await openSample();
  const edit = { sheetId: "1", axis: "row" as const, kind: "insert" as const, from: 2, count: 2 };
  const book = untouched(file);
  const sheets = book.sheets.map((sheet) => {
    if (sheet.name !== "Job") return sheet;
    const state = new Map([...sheet.state].map(([row, line]) => [row >= 2 ? row + 2 : row, line]));
    const tables = sheet.tables.map((table) => ({
      ...table,
      reference: table.reference.replace(/\d+/g, (row) => String(Number(row) + 2)),
    }));
    return { ...sheet, state, tables };
  });
  const again = await openBytes(saveWorkbookFile(file, { ...book, sheets, structure: [edit] }));
  const [before, after] = [file, again].map((opened) => opened.data.sheets["1"]?.cellData);
  expect(after?.[5]?.[1]?.v).toBe(before?.[3]?.[1]?.v);
  expect(after?.[0]?.[0]?.v).toBe(before?.[0]?.[0]?.v);
  expect(again.book.names.find(({ name }) => name === "AsOf")?.refersTo).toBe("Job!$B$6");
  const tables = again.data.resources?.find(({ name }) => name === "SHEET_TABLE_PLUGIN")?.data ?? "";
  expect(JSON.parse(tables)["1"].tables[0].range.startRow).toBe(5);
});

test("sheets added, renamed, hidden, moved and taken out are so in the file", async () => {
  const file = await openSample();
  const book = untouched(file);
  const [job, loans, ...rest] = book.sheets.filter(({ name }) => name !== "Try here");
  if (job === undefined || loans === undefined) throw new Error("The sample has changed");
  const added = { ...job, sheetId: "new", name: "My <own>", state: new Map(), tables: [], columns: new Map() };
  const sheets = [{ ...loans, name: "Pull & co" }, { ...job, hidden: true }, added, ...rest];
  const again = await openBytes(saveWorkbookFile(file, { ...book, sheets }));
  const names = again.book.sheets.map(({ name, state }) => [name, state]);
  expect(names.slice(0, 3)).toEqual([
    ["Pull & co", "visible"],
    ["Job", "hidden"],
    ["My <own>", "visible"],
  ]);
  expect(names.map(([name]) => name)).not.toContain("Try here");
});

test("texts kept for the pane come back from the file, whatever they hold", async () => {
  const { readKeptPart } = await import("../../../src/bench/save/readKeptPart");
  const file = await openSample();
  const kept = new Map([["columns", JSON.stringify({ value: 'Ins. "amt" <&> é\u2028' })]]);
  const again = await openBytes(saveWorkbookFile(file, { ...untouched(file), kept }));
  expect(readKeptPart(again.parts)).toEqual(kept);
});

test("a sheet that was added keeps its table and its lists in the file", async () => {
  const file = await openSample();
  const book = untouched(file);
  const [job] = book.sheets;
  if (job === undefined) throw new Error("The sample has changed");
  const look = job.state.values().next().value?.values().next().value?.look;
  if (look === undefined) throw new Error("The sample has changed");
  const cell = (value: string | null) => ({ value, formula: null, spill: null, spilled: false, look });
  const state = new Map(
    [
      ["Lender", "Say <yes> & no"],
      ["Ado", "yes"],
    ].map((row, index) => [index, new Map(row.map((value, column) => [column, cell(value)] as const))]),
  );
  const added: SavingSheet = {
    ...job,
    sheetId: "new",
    name: "Asked",
    state,
    columns: new Map(),
    tables: [{ name: "Asked", reference: "A1:B2", headings: ["Lender", "Say <yes> & no"], filters: [] }],
    lists: [
      { reference: "A2:A501", source: "='Lenders'!$A$5:$A$504", isStrict: false },
      { reference: "B2:B501", source: "yes,no", isStrict: true },
    ],
  };
  const again = await openBytes(saveWorkbookFile(file, { ...book, sheets: [...book.sheets, added] }));
  const sheetId = again.book.sheets.find(({ name }) => name === "Asked")?.sheetId ?? "";
  expect(openedTables(again.data)[sheetId]).toMatchObject([
    { name: "Asked", row: 0, column: 0, rowCount: 2, columnCount: 2 },
  ]);
  const lists = JSON.parse(
    again.data.resources?.find(({ name }) => name === "SHEET_DATA_VALIDATION_PLUGIN")?.data ?? "{}",
  ) as Record<string, { formula1: string }[]>;
  expect(lists[sheetId]?.map(({ formula1 }) => formula1)).toEqual(["='Lenders'!$A$5:$A$504", "yes,no"]);
  const ids = Object.entries(again.parts).flatMap(([path, bytes]) =>
    path.startsWith("xl/tables/") ? (/<table\b[^>]*\bid="(\d+)"/.exec(strFromU8(bytes))?.[1] ?? []) : [],
  );
  expect(new Set(ids).size).toBe(ids.length);
});
