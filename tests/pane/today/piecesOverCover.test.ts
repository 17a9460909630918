import { covergap } from "../../../src/functions/bindings/covergap";
import { piecesOverCover } from "../../../src/pane/today/piecesOverCover";
import { pieceTables } from "../../../src/pane/today/pieceTables";
import { readSheets } from "../readSheets";

const ASOF = 46086;
const headings = ["Piece", "Lender", "Out", "Back", "Quantity", "Value", "Currency"];
const rows = [
  ["ring", "Ado", ASOF - 3, null, 1, 6000, "GBP"],
  ["coat", "Ado", ASOF - 3, ASOF, 1, 5500.01, "GBP"],
  ["shirts", "Ado", ASOF - 3, null, 4, 5500, "GBP"],
  ["gown", "Ado", ASOF - 3, ASOF - 1, 1, 9000, "GBP"],
  ["clutch", "Ado", ASOF + 1, null, 1, 9000, "GBP"],
  ["tiara", "Ado", ASOF - 3, null, 1, "ask Ada", "GBP"],
];

test("the pieces held that are over the limit of one are those of COVERGAP, the most over first, each with its cell", async () => {
  const { tables } = await readSheets([{ name: "Loans", rows: [headings, ...rows] }]);
  const over = piecesOverCover(pieceTables(tables), "GBP", 5500, ASOF);
  expect(over.map(({ name, value, overBy, at }) => [name, value, overBy, at.row, at.column])).toEqual([
    ["ring", 6000, 500, 1, 5],
    ["coat", 5500.01, 0.01, 2, 5],
  ]);
  const given = covergap([headings, ...rows.slice(0, 3)], 1000000, 5500).slice(1);
  expect(given.map(([what, , , value, overBy]) => [what, value, overBy])).toEqual(
    over.map(({ name, value, overBy }) => [name, value, overBy]),
  );
});

test("another currency's pieces are not held against it", async () => {
  const { tables } = await readSheets([{ name: "Loans", rows: [headings, ...rows] }]);
  expect(piecesOverCover(pieceTables(tables), "EUR", 5500, ASOF)).toEqual([]);
});
