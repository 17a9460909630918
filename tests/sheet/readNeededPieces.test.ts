import { readLooks } from "../../src/sheet/readLooks";
import { readNeededPieces } from "../../src/sheet/readNeededPieces";
import { readTable } from "../../src/sheet/readTable";

function needed(pieces: unknown[][], looks: unknown[][]): string[] {
  const pieceTable = readTable({ cells: pieces, kind: "pieces", needs: [] });
  const lookTable = readTable({ cells: looks, kind: "looks", needs: [] });
  if (!pieceTable.ok || !lookTable.ok) throw new Error("no tables");
  const rows = readLooks(lookTable.value);
  if (!rows.ok) throw new Error("no looks");
  const needed = readNeededPieces(pieceTable.value, rows.value);
  return Array.from({ length: needed.count }, (_, index) => {
    const { row, looks: named } = needed.at(index);
    return `${String(row.piece)}: ${named.map(({ key }) => key).join(" ")}${needed.isBorrowed(row) ? "" : " own"}`;
  });
}

const looks = [
  ["Look", "Shooting", "Pieces"],
  [1, 30, "P1; P2"],
  [2, 30, "P2"],
  [7, 30, ""],
];

test("a piece is needed by the looks its Look cell names, and by those that list its number", () => {
  const pieces = [
    ["Piece", "Look", "Lender"],
    ["P1", "7, 1", "Velter"],
    ["P2", "", "own"],
    ["p-2", "7", ""],
    ["P4", "spare", "Velter"],
    ["P5", "", "Velter"],
  ];
  expect(needed(pieces, looks)).toEqual(["P1: 7 1", "P2: 1 2 own", "p-2: 7 1 2", "P4: ", "P5: "]);
});

test("a piece whose Look cannot be read names none there", () => {
  const pieces = [
    ["Piece", "Look"],
    ["P9", { type: "Error", basicValue: "#N/A" }],
  ];
  expect(needed(pieces, looks)).toEqual(["P9: "]);
});
