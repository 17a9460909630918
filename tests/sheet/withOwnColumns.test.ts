import { withOwnColumns } from "../../src/sheet/withOwnColumns";
import type { Table } from "../../src/sheet/table";

const table: Table = {
  kind: "pieces",
  cells: [
    ["", "Piece", "Out", "Paid", "Fee", ""],
    [null, "Silk slip", 46083, 0, 0, null],
    [null, "Wool coat", 0, 25, 4, null],
    [null, "Boots", "tbc", { type: "Error", basicValue: "#REF!" }, null, null],
  ],
  headingRow: 0,
  headings: ["", "Piece", "Out", "Paid", "Fee", ""],
  columnOf: { piece: 1, out: 2, rentalFee: 4 },
  dataRows: [1, 2, 3],
};
const added = [
  { heading: "Days late", format: "as is", cell: (row: { readonly row: number; readonly late: number }) => row.late },
] as const;

test("gives the rows picked, in their order, with the columns added behind their own", () => {
  const result = withOwnColumns(
    table,
    [
      { row: 2, late: 7 },
      { row: 1, late: 3 },
    ],
    added,
  );
  expect(result.headings).toEqual(["Piece", "Out", "Paid", "Fee", "Days late"]);
  expect(result.rows).toEqual([
    ["Wool coat", null, 25, 4, 7],
    ["Silk slip", 46083, 0, 0, 3],
  ]);
});

test("date columns keep a date format", () => {
  expect(withOwnColumns(table, [], added).formats).toEqual(["as is", "date", "as is", "as is", "as is"]);
});

test("an error value in a cell stays an error, and text in a date column stays as typed", () => {
  const [row] = withOwnColumns(table, [{ row: 3, late: 1 }], added).rows;
  expect(row).toEqual([
    "Boots",
    "tbc",
    { reason: "error-in-cell", facts: { argument: "Paid, row 4", given: "#REF!" } },
    null,
    1,
  ]);
});

test("a column without a heading is kept where it stands between others or holds something", () => {
  const cells = [
    ["", "Piece", "", "Out", ""],
    ["x", "Silk slip", null, 46083, null],
  ];
  const other: Table = {
    ...table,
    cells,
    headings: ["", "Piece", "", "Out", ""],
    columnOf: { piece: 1, out: 3 },
    dataRows: [1],
  };
  expect(withOwnColumns(other, [{ row: 1, late: 1 }], added)).toMatchObject({
    headings: ["", "Piece", "", "Out", "Days late"],
    rows: [["x", "Silk slip", null, 46083, 1]],
  });
});

test("a number in the cell of a whole table's host arrives with its format and is the number", () => {
  const cells = [
    ["Piece", "Out"],
    ["Silk slip", { type: "FormattedNumber", basicValue: 46083, numberFormat: "d mmm" }],
  ];
  const other: Table = { ...table, cells, headings: ["Piece", "Out"], columnOf: { piece: 0, out: 1 }, dataRows: [1] };
  expect(withOwnColumns(other, [{ row: 1 }], []).rows).toEqual([["Silk slip", 46083]]);
});

test("a field that cannot be read has its problem in its own cell, and the rest of the row stays as typed", () => {
  const unread = { reason: "date-not-understood", facts: { argument: "Out, row 4", given: "tbc" } } as const;
  const [row] = withOwnColumns(table, [{ row: 3, late: 1, unread: { out: unread, due: unread } }], added).rows;
  expect(row!.slice(0, 2)).toEqual(["Boots", unread]);
});

test("a heading that is a number is shown", () => {
  const cells = [["Piece", 2025, 0]];
  const other: Table = { ...table, cells, headings: ["Piece", "", ""], columnOf: { piece: 0 }, dataRows: [] };
  expect(withOwnColumns(other, [], []).headings).toEqual(["Piece", "2025"]);
});

test("a 0 in a column that is not understood is a number among numbers, and else a blank cell as some hosts send it", () => {
  const cells = [
    [0, "Piece", "Steamed", "Score", 0],
    [0, "Silk slip", "yes", 3, 0],
    [0, "Wool coat", 0, 0, 0],
  ];
  const headings = ["", "Piece", "Steamed", "Score", ""];
  const other: Table = { ...table, cells, headings, columnOf: { piece: 1 }, dataRows: [1, 2] };
  expect(withOwnColumns(other, [{ row: 1 }, { row: 2 }], [])).toMatchObject({
    headings: ["Piece", "Steamed", "Score"],
    rows: [
      ["Silk slip", "yes", 3],
      ["Wool coat", null, 0],
    ],
  });
});
