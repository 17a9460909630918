import fc from "fast-check";
import type { Cell } from "../../src/sheet/cell";
import type { ColumnChoices } from "../../src/sheet/columnChoices";
import { readWorkbook } from "../../src/sheet/readWorkbook";
import type { SheetSnapshot, TableArea } from "../../src/sheet/sheetSnapshot";

const PIECES = ["Piece", "Lender", "Out", "Due", "Value"];
const LENDERS = ["Lender", "Address", "Opens", "Closes", "Closed weekdays"];
const LOOKS = ["Look", "Order", "Talent", "Change", "Shooting"];
const piece = (no: number): Cell[] => [no, "Maison Orla", 46083, 46090, 400];
const lender = (name: string): Cell[] => [name, "3 Quay Row", 0.375, 0.75, "Sun"];
const look = (no: number): Cell[] => [no, no, "Mirela", 15, 30];

/** A cell typed as text that begins with = is a formula; "=A1->12" shows what it gives. */
function sheet(name: string, rows: readonly (readonly unknown[])[], more: Partial<SheetSnapshot> = {}): SheetSnapshot {
  const width = Math.max(0, ...rows.map((row) => row.length));
  const split = (cell: unknown): [Cell, string | null] => {
    if (typeof cell !== "string" || !cell.startsWith("=")) return [(cell ?? null) as Cell, null];
    const [formula, value] = cell.split("->");
    return [value ?? null, formula!];
  };
  const cells = rows.map((row) => Array.from({ length: width }, (_, column) => split(row[column])));
  return {
    sheetId: `id of ${name}`,
    name,
    visible: true,
    isProtected: false,
    firstRow: 0,
    firstColumn: 0,
    values: cells.map((row) => row.map(([value]) => value)),
    formulas: cells.map((row) => row.map(([, formula]) => formula)),
    tables: [],
    ...more,
  };
}
const read = (sheets: readonly SheetSnapshot[], choices?: ColumnChoices) =>
  readWorkbook({ name: "Job", dateSystem: 1900, sheets }, choices);
const found = (sheets: readonly SheetSnapshot[], choices?: ColumnChoices) =>
  read(sheets, choices).tables.map((table) => [table.kind, table.firstRow, table.firstColumn, table.dataRows.length]);

test("a sheet with a heading row is one table, of the kind its headings say", () => {
  expect(found([sheet("Loans", [PIECES, piece(1), piece(2)])])).toEqual([["pieces", 0, 0, 2]]);
  expect(found([sheet("Lenders", [LENDERS, lender("Orla")])])).toEqual([["lenders", 0, 0, 1]]);
  expect(found([sheet("Looks", [LOOKS, look(1)])])).toEqual([["looks", 0, 0, 1]]);
  expect(
    found([
      sheet("Asked", [
        ["Lender", "Asked on", "Wanted", "Needed by", "Reply"],
        ["Orla", 46080, "coats", 46083, ""],
      ]),
    ]),
  ).toEqual([["requests", 0, 0, 1]]);
  expect(
    found([
      sheet("Shops", [
        ["Shop", "Bought on", "Amount", "Kept"],
        ["Vale", 46080, 95, "no"],
      ]),
    ]),
  ).toEqual([["receipts", 0, 0, 1]]);
  expect(
    found([
      sheet("Run", [
        ["Stop", "Open", "Close", "Minutes"],
        ["Orla", 0.4, 0.7, 10],
      ]),
    ]),
  ).toEqual([["stops", 0, 0, 1]]);
  expect(
    found([
      sheet("Shoes", [
        ["Shoes", "Size", "Where", "Pairs"],
        ["pumps", 39, "indoors", 1],
      ]),
    ]),
  ).toEqual([["shoes", 0, 0, 1]]);
  expect(
    found([
      sheet("Day", [
        ["Date", "Call", "Wrap", "Dressers"],
        [46083, 0.33, 0.75, 1],
      ]),
    ]),
  ).toEqual([["day", 0, 0, 1]]);
});

test("titles above, blank rows between jobs, repeated headings and a total at the bottom are no data", () => {
  const rows = [
    ["Pull for Rue"],
    [],
    PIECES,
    piece(1),
    piece(2),
    [],
    piece(3),
    PIECES,
    piece(4),
    [],
    ["Total", "", "", "", 1600],
  ];
  expect(found([sheet("Loans", rows)])).toEqual([["pieces", 2, 0, 4]]);
});

test("a table has its place in the workbook, where the used range does not begin at A1", () => {
  const [table] = read([sheet("Loans", [PIECES, piece(1)], { firstRow: 3, firstColumn: 2 })]).tables;
  expect(table).toMatchObject({ sheetId: "id of Loans", sheetName: "Loans", firstRow: 3, firstColumn: 2 });
});

test("tables side by side are parted by a blank column", () => {
  const rows = [
    [...PIECES, null, ...LENDERS],
    [...piece(1), null, ...lender("Orla")],
    [...piece(2), null, null, null, null, null, null],
  ];
  const { tables } = read([sheet("All", rows)]);
  expect(tables.map((table) => [table.kind, table.firstColumn, table.dataRows.length])).toEqual([
    ["pieces", 0, 2],
    ["lenders", 6, 1],
  ]);
  expect(tables[1]!.cells[1]).toEqual(lender("Orla"));
});

test("tables side by side may begin on different rows", () => {
  const rows = [
    ["Loans", null, null, null, null, null, "Looks"],
    [...PIECES, null],
    [...piece(1), null, ...LOOKS],
    [...piece(2), null, ...look(1)],
  ];
  expect(found([sheet("All", rows)])).toEqual([
    ["pieces", 1, 0, 2],
    ["looks", 2, 6, 1],
  ]);
});

test("the call and the wrap typed under a table or between its rows are no rows of it", () => {
  const rows = [LOOKS, look(1), [], ["Call", 8.5 / 24], look(2), [], ["Call", 8.5 / 24], ["Wrap", 18 / 24]];
  expect(read([sheet("Looks", rows)]).tables.map(({ cells, dataRows }) => [cells.length, dataRows])).toEqual([
    [5, [1, 4]],
  ]);
});

test("tables one below the other are parted by a blank row, and a title belongs to the table below it", () => {
  const rows = [PIECES, piece(1), piece(2), [], ["Who lends"], LENDERS, lender("Orla"), [], LOOKS, look(1), look(2)];
  expect(found([sheet("All", rows)])).toEqual([
    ["pieces", 0, 0, 2],
    ["lenders", 5, 0, 1],
    ["looks", 8, 0, 2],
  ]);
});

test("a column with data but no heading does not part a table", () => {
  const rows = [
    ["Piece", "Lender", "", "Out", "Due"],
    [1, "Orla", "x", 46083, 46090],
  ];
  expect(read([sheet("Loans", rows)]).tables[0]!.columnOf).toEqual({ piece: 0, lender: 1, out: 3, due: 4 });
});

describe("the host's own tables", () => {
  const area = (name: string, row: number, column: number, rowCount: number, columnCount: number): TableArea => ({
    name,
    row,
    column,
    rowCount,
    columnCount,
  });

  test("are taken as they are, and what stands beside or below them is not theirs", () => {
    const rows = [["Loans"], PIECES, piece(1), piece(2), ["", "Total", "", "", 800], [], ["a note", "by Ana"]];
    const read = found([sheet("Loans", rows, { tables: [area("Loans", 1, 0, 3, 5)] })]);
    expect(read).toEqual([["pieces", 1, 0, 2]]);
  });

  test("beside an area that is none of them", () => {
    const rows = [
      [...PIECES, null, ...LOOKS],
      [...piece(1), null, ...look(1)],
    ];
    expect(found([sheet("All", rows, { tables: [area("Loans", 0, 0, 2, 5)] })])).toEqual([
      ["pieces", 0, 0, 1],
      ["looks", 0, 6, 1],
    ]);
  });

  test("that are of no kind come back as unread, by name", () => {
    const rows = [
      ["Closed", "Why"],
      [46115, "Good Friday"],
    ];
    const { tables, unread } = read([sheet("Job", rows, { tables: [area("ClosedDays", 0, 0, 2, 2)] })]);
    expect(tables).toEqual([]);
    expect(unread).toEqual([
      {
        sheetId: "id of Job",
        sheetName: "Job",
        tableName: "ClosedDays",
        row: 0,
        column: 0,
        headings: ["Closed", "Why"],
        kinds: [],
      },
    ]);
  });
});

describe("the result of a formula is no table", () => {
  test("where one of our functions spills", () => {
    const spilled = [
      ["=TACK.LATEROWS(Loans!A1:E9,C1)->Piece", ...PIECES.slice(1), "Days late"],
      [...piece(1), 3],
      [...piece(2), 1],
    ];
    expect(read([sheet("Late", spilled)])).toEqual({ tables: [], unread: [], leftOut: [] });
  });
  test("nor where a table is filtered together with its headings", () => {
    expect(
      found([
        sheet("Filtered", [
          ["=VSTACK(Loans[#Headers],FILTER(Loans,Loans[Due]<C1))->Piece", ...PIECES.slice(1)],
          piece(1),
        ]),
      ]),
    ).toEqual([]);
  });
  test("and ends the table above it", () => {
    const rows = [
      PIECES,
      piece(1),
      [],
      ["=TACK.LATEROWS(A1:E2,C1)->Piece", ...PIECES.slice(1)],
      piece(1),
      [],
      LOOKS,
      look(1),
    ];
    expect(found([sheet("All", rows)])).toEqual([
      ["pieces", 0, 0, 1],
      ["looks", 6, 0, 1],
    ]);
  });
  test("but a table with formulas in its cells, or in one heading, is one", () => {
    expect(found([sheet("Loans", [PIECES, [1, "Orla", 46083, '=TACK.DUE(C2,"7 days")->46090', 400]])])).toEqual([
      ["pieces", 0, 0, 1],
    ]);
    expect(found([sheet("Loans", [["Piece", "Lender", '="Out"->Out', "Due", "Value"], piece(1)])])).toEqual([
      ["pieces", 0, 0, 1],
    ]);
  });
});

test("the formulas of a table stand beside its cells", () => {
  const rows = [["Notes"], [null, ...PIECES], [null, 1, "Orla", 46083, '=TACK.DUE(D3,"7 days")->46090', 400]];
  const [table] = read([sheet("Loans", rows)]).tables;
  const column = table!.columnOf["due"]!;
  expect(table!.formulas[1]![column]).toBe('=TACK.DUE(D3,"7 days")');
});

test("headings that are too few for any kind are unread where they could be a table, and nothing where they could not", () => {
  const { tables, unread } = read([
    sheet("Odd", [
      ["Look", "Talent", "Mood", "Song"],
      [1, "Mirela", "blue", "x"],
    ]),
    sheet("Notes", [
      ["Call Ana", "on Monday"],
      ["bring tape", ""],
    ]),
  ]);
  expect(tables).toEqual([]);
  expect(unread.map((area) => [area.sheetName, area.headings])).toEqual([["Odd", ["Look", "Talent", "Mood", "Song"]]]);
});

test("a field that two headings could be is in no column, and both are named", () => {
  const [table] = read([
    sheet("Loans", [
      [...PIECES, "Insured value"],
      [...piece(1), 500],
    ]),
  ]).tables;
  expect(table!.columnOf).not.toHaveProperty("value");
  expect(table!.contested).toEqual(new Map([["value", [4, 5]]]));
});

test("choices kept for a sheet go before the vocabulary, and make a table of headings nobody could know", () => {
  const rows = [
    ["Thing", "Whose", "When", "Until when"],
    [1, "Orla", 46083, 46090],
  ];
  const choices: ColumnChoices = {
    Loans: [
      { kind: "pieces", field: "piece", heading: "Thing" },
      { kind: "pieces", field: "lender", heading: "Whose" },
      { kind: "pieces", field: "out", heading: "When" },
      { kind: "pieces", field: "due", heading: "Until when" },
    ],
  };
  expect(found([sheet("Loans", rows)])).toEqual([]);
  expect(read([sheet("Loans", rows)], choices).tables.map((table) => table.columnOf)).toEqual([
    { piece: 0, lender: 1, out: 2, due: 3 },
  ]);
  expect(found([sheet("Other", rows)], choices)).toEqual([]);
});

test("empty sheets and sheets of anything at all are read without a fault, and no table reaches outside its sheet", () => {
  const cell = fc.oneof(
    fc.constantFrom<Cell>(
      ...PIECES,
      ...LENDERS,
      ...LOOKS,
      "Total",
      "",
      null,
      null,
      null,
      0,
      46083,
      { error: "#N/A" },
      true,
      "=TACK.LATEROWS(A1)->Piece",
    ),
    fc.string(),
  );
  const rows = fc.array(fc.array(cell, { maxLength: 8 }), { maxLength: 12 });
  fc.assert(
    fc.property(rows, (cells) => {
      const one = sheet("Any", cells);
      for (const table of read([one]).tables) {
        expect(table.firstRow + table.cells.length).toBeLessThanOrEqual(one.values.length);
        expect(table.formulas.map((row) => row.length)).toEqual(table.cells.map((row) => row.length));
        expect(table.dataRows.every((row) => row > table.headingRow && row < table.cells.length)).toBe(true);
      }
    }),
    { numRuns: 500 },
  );
  expect(read([sheet("Empty", [])])).toEqual({ tables: [], unread: [], leftOut: [] });
});

test("an area given its kind by hand is read as that kind, and one set aside is neither a table nor unread", () => {
  const odd = sheet("Odd", [
    ["Look", "Talent", "Mood", "Song"],
    [1, "Mina", "blue", "none"],
  ]);
  const readAs = (kind: "looks" | null) =>
    readWorkbook(
      { name: "Job", dateSystem: 1900, sheets: [odd] },
      {},
      {
        Odd: [{ headings: ["Look", "Talent", "Mood", "Song"], kind }],
      },
    );
  expect(read([odd]).unread).toHaveLength(1);
  expect(readAs("looks").tables.map(({ kind, columnOf }) => [kind, columnOf])).toEqual([
    ["looks", { look: 0, talent: 1 }],
  ]);
  expect(readAs("looks").unread).toEqual([]);
  expect(readAs(null)).toMatchObject({ tables: [], unread: [], leftOut: [{ sheetName: "Odd", row: 0, column: 0 }] });
});
