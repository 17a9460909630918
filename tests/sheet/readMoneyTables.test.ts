import { sayProblem } from "../../src/domain/wording";
import { readMoneyTables } from "../../src/sheet/readMoneyTables";

const receipts = [
  ["Job", "Shop", "Amount", "Kept"],
  ["Lumen", "Kessel", 250, "yes"],
  ["Tide", "Odeon", 40, ""],
];
const pieces = [
  ["Item no.", "Job", "Rental fee", "Deposit"],
  ["P1", "Lumen", 60, 200],
];

/** Where each table's headings and data stand in the range, or the sentence of the problem. */
function foundIn(cells: readonly (readonly unknown[])[] | null, columns?: unknown) {
  const tables = readMoneyTables(cells, columns);
  if (!tables.ok) return sayProblem(tables.problem);
  const { receipts: first, pieces: second } = tables.value;
  return [first, second].map((kind) => kind.map(({ headingRow, dataRows }) => [headingRow, ...dataRows]));
}

test("a range may be a table of either kind", () => {
  expect(foundIn(receipts)).toEqual([[[0, 1, 2]], []]);
  expect(foundIn(pieces)).toEqual([[], [[0, 1]]]);
});

test("both may stand one below the other, either first, with a title, blank rows and the padding of VSTACK", () => {
  const title = [["Money of the season", "", "", ""]];
  const blank = [["", "", "", ""]];
  expect(foundIn([...title, ...receipts, ...blank, ...pieces])).toEqual([[[1, 2, 3]], [[5, 6]]]);
  expect(foundIn([...pieces, ...receipts])).toEqual([[[2, 3, 4]], [[0, 1]]]);
  const padded = receipts.map((row) => [...row, { error: "#N/A" }]);
  const wide = pieces.map((row) => [...row, row[0] === "P1" ? 46083 : "Out"]);
  expect(foundIn([...padded, ...wide])).toEqual([[[0, 1, 2]], [[3, 4]]]);
});

test("the lower table is found below more rows than headings are sought in", () => {
  const many = Array.from({ length: 40 }, (_, row) => ["Lumen", `Shop ${row}`, row + 1, ""]);
  const found = foundIn([receipts[0]!, ...many, ...pieces]) as number[][][];
  expect([found[0]![0]!.length, found[1]]).toEqual([41, [[41, 42]]]);
});

test("headings may hold a figure, and rows of text amounts and days are data", () => {
  const amounts = [
    ["Job", "Shop", "Amount", "Note 2"],
    ["Lumen", "Kessel", "£250.00", ""],
    ["Amount", "Deposit", "(40)", "-"],
  ];
  expect(foundIn([...amounts, ...pieces])).toEqual([[[0, 1, 2]], [[3, 4]]]);
});

test("a single column will do", () => {
  expect(foundIn([["Amount"], [5]])).toEqual([[[0, 1]], []]);
});

test("one table may have the columns of both", () => {
  expect(
    foundIn([
      ["Job", "Amount", "Deposit"],
      ["Lumen", 5, 7],
    ]),
  ).toEqual([[[0, 1]], [[0, 1]]]);
});

test("a price in a pieces table is no money spent", () => {
  expect(
    foundIn([
      ["Piece", "Price", "Deposit"],
      ["P1", 900, 7],
    ]),
  ).toEqual([[], [[0, 1]]]);
  expect(
    foundIn([
      ["Shop", "Price"],
      ["Kessel", 90],
    ]),
  ).toEqual([[[0, 1]], []]);
});

test("each part of columns goes to the tables that have its heading", () => {
  const odd = [["Production", "Shop", "Till", "Kept"], ...receipts.slice(1)];
  expect(foundIn([...odd, ...pieces], "amount=Till; job=Production")).toEqual([[[0, 1, 2]], [[3, 4]]]);
  expect(foundIn(receipts, "amount=Till")).toContain('no heading "Till"');
  expect(foundIn(receipts, "amuont=Kept")).toContain('"amuont=Kept" is not understood');
});

test("a range without any of the columns, without headings, or blank is a problem", () => {
  expect(
    foundIn([
      ["Job", "Piece"],
      ["Lumen", "Cape"],
    ]),
  ).toContain("rows has no column headed Amount, Rental fee or Deposit");
  expect(
    foundIn([
      [1, 2],
      [3, 4],
    ]),
  ).toContain("no heading row");
  expect(foundIn(null)).toContain("rows is blank");
});

test("two columns that could be the amount are a problem, as in any table", () => {
  expect(
    foundIn([
      ["Shop", "Amount", "Paid"],
      ["Kessel", 5, 5],
    ]),
  ).toContain("could both be Amount");
});
