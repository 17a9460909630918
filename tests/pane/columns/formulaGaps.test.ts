import { formulaGaps } from "../../../src/pane/columns/formulaGaps";
import { functionDocs } from "../../../src/pane/functions/functionDocs";
import type { ReadTables } from "../../../src/pane/state/ReadTables";
import type { ColumnChoices } from "../../../src/sheet/columnChoices";
import { readWorkbook } from "../../../src/sheet/readWorkbook";
import type { SheetSnapshot } from "../../../src/sheet/sheetSnapshot";

const loans: SheetSnapshot["values"] = [
  ["Piece", "From", "Out", "Due", "Back", "Ins. amt intern"],
  ["Coat", "Ado", 46080, 46090, null, 900],
];

/** A table of loans, called Loans, and one formula in A1 of a sheet of its own. */
function readWith(formula: string, columns: ColumnChoices): ReadTables {
  const sheet = (sheetId: string, name: string, values: SheetSnapshot["values"]): SheetSnapshot => ({
    sheetId,
    name,
    visible: true,
    isProtected: false,
    firstRow: 0,
    firstColumn: 0,
    values,
    formulas: values.map((row) => row.map(() => null)),
    tables: [],
  });
  const sheets = [
    { ...sheet("s0", "My loans", loans), tables: [{ name: "Loans", row: 0, column: 0, rowCount: 2, columnCount: 6 }] },
    { ...sheet("s1", "Totals", [[0]]), formulas: [[formula]] },
  ];
  const workbook = { name: "Job", dateSystem: 1900 as const, sheets };
  return { workbook, ...readWorkbook(workbook, columns) };
}
const value = { kind: "pieces" as const, field: "value", heading: "Ins. amt intern" };
const lender = { kind: "pieces" as const, field: "lender", heading: "From" };
const gapsOf = (formula: string, columns: ColumnChoices = { "My loans": [value] }) =>
  formulaGaps(readWith(formula, columns), columns, functionDocs).map(({ after, obstacle }) => after ?? obstacle);

test.each([
  [
    "the argument is added behind those that are there",
    "=TACK.LATEROWS(Loans[#All],B1)",
    '=TACK.LATEROWS(Loans[#All],B1,"value=Ins. amt intern")',
  ],
  [
    "arguments left out in between are stepped over",
    "=TACK.CARRIED(Loans[#All])",
    '=TACK.CARRIED(Loans[#All],,"value=Ins. amt intern")',
  ],
  [
    "a blank argument is filled",
    "=TACK.LATEROWS(Loans[#All],B1, )",
    '=TACK.LATEROWS(Loans[#All],B1,"value=Ins. amt intern")',
  ],
  [
    "what the formula says of other columns stays",
    '=TACK.LATEROWS(Loans[#All],B1,"lender=From")',
    '=TACK.LATEROWS(Loans[#All],B1,"lender=From; value=Ins. amt intern")',
  ],
  [
    "where it says otherwise of the same column, the choice counts",
    '=TACK.LATEROWS(Loans[#All],B1,"value=Piece")',
    '=TACK.LATEROWS(Loans[#All],B1,"value=Ins. amt intern")',
  ],
  [
    "a table inside another function counts",
    "=IFERROR(TACK.VALUEOUT(VSTACK(Loans[#Headers],FILTER(Loans[],Loans[From]=A2)),B1),0)",
    '=IFERROR(TACK.VALUEOUT(VSTACK(Loans[#Headers],FILTER(Loans[],Loans[From]=A2)),B1,"value=Ins. amt intern"),0)',
  ],
  [
    "a reference that reaches over the headings counts",
    "=TACK.LATEROWS('My loans'!$A$1:$F$90,B1)",
    `=TACK.LATEROWS('My loans'!$A$1:$F$90,B1,"value=Ins. amt intern")`,
  ],
  [
    "and so do whole columns",
    "=TACK.LATEROWS('My loans'!A:F,B1)",
    `=TACK.LATEROWS('My loans'!A:F,B1,"value=Ins. amt intern")`,
  ],
  [
    "every call in a formula is mended",
    "=TACK.VALUEOUT(Loans[#All],1)-TACK.VALUEOUT(Loans[#All],2)",
    '=TACK.VALUEOUT(Loans[#All],1,"value=Ins. amt intern")-TACK.VALUEOUT(Loans[#All],2,"value=Ins. amt intern")',
  ],
  [
    "a columns argument from a cell is left to its owner",
    "=TACK.LATEROWS(Loans[#All],B1,C1)",
    "it takes its columns from C1; write there: value=Ins. amt intern",
  ],
  [
    "so is one that is not understood",
    '=TACK.LATEROWS(Loans[#All],B1,"Ins. amt")',
    'its columns, "Ins. amt", are not understood; write there: value=Ins. amt intern',
  ],
])("%s", (_, formula, after) => {
  expect(gapsOf(formula)).toEqual([after]);
});

test.each([
  ["the formula has the argument already", '=TACK.LATEROWS(Loans[#All],B1,"value = ins amt INTERN")'],
  ["it reads another table", "=TACK.LATEROWS(Other[#All],B1)"],
  ["it reads rows without the headings", "=TACK.LATEROWS('My loans'!A2:F9,B1)"],
  ["it reads another sheet", "=TACK.LATEROWS(A1:F9,B1)"],
  ["the function takes no table", "=TACK.DUE(Loans[Out],Loans[Due])"],
  ["the call stands in a text", '="TACK.LATEROWS(Loans[#All],B1)"'],
])("nothing is needed where %s", (_, formula) => {
  expect(gapsOf(formula)).toEqual([]);
});

test("nothing is needed without choices, or with choices about another sheet or another kind of table", () => {
  const formula = "=TACK.LATEROWS(Loans[#All],B1)";
  expect(gapsOf(formula, {})).toEqual([]);
  expect(gapsOf(formula, { Other: [value] })).toEqual([]);
  expect(gapsOf(formula, { "My loans": [{ kind: "looks", field: "order", heading: "From" }] })).toEqual([]);
});

test("quotes in a heading are doubled, and several choices stand in one argument", () => {
  const quoted = { "My loans": [{ ...value, heading: 'Ins. "amt" intern' }, lender] };
  expect(gapsOf("=TACK.LATEROWS(Loans[#All],B1)", quoted)).toEqual([
    '=TACK.LATEROWS(Loans[#All],B1,"value=Ins. ""amt"" intern; lender=From")',
  ]);
});

test("after the argument is inserted nothing is needed any more", () => {
  const [after] = gapsOf("=TACK.CARRIED(Loans[#All])");
  expect(gapsOf(after ?? "")).toEqual([]);
});
