import { readBagPieces } from "../../src/sheet/readBagPieces";
import { readTable } from "../../src/sheet/readTable";

function pieces(cells: unknown[][]): ReturnType<typeof readBagPieces> {
  const table = readTable({ cells, kind: "pieces", needs: [["weight", "kind", "description"]] });
  if (!table.ok) throw new Error(JSON.stringify(table.problem));
  return readBagPieces(table.value, 1000);
}

describe("readBagPieces", () => {
  it("calls a piece what stands under Piece, as typed, else under Description, else under Kind", () => {
    const rows = pieces([
      ["Piece", "Description", "Kind", "Weight"],
      [12, "Slip", "dress", 1],
      [" ", "Slip", "dress", 1],
      ["", "", "", 1],
      [0, null, "dress", 1],
    ]);
    expect(rows.map(({ label }) => label)).toEqual([12, "Slip", null, "dress"]);
  });

  it("names a cell with an error in it as that", () => {
    const [row] = pieces([
      ["Piece", "Weight"],
      [{ type: "Error", basicValue: "#REF!" }, 1],
    ]);
    expect(row!.label).toMatchObject({ reason: "error-in-cell", facts: { argument: "Piece, row 2", given: "#REF!" } });
  });

  it("takes spellings of what keeps pieces together for one, and blanks for none", () => {
    const rows = pieces([
      ["Piece", "Weight", "Together"],
      ["A", 1, "Set A"],
      ["B", 1, "set-a"],
      ["C", 1, 7],
      ["D", 1, ""],
      ["E", 1, 0],
    ]);
    expect(rows.map(({ together }) => together)).toEqual(["seta", "seta", "7", null, null]);
  });

  it("passes over blank rows and a totals row, and reads weights, kinds and quantities", () => {
    const rows = pieces([
      ["Piece", "Kind", "Weight", "Quantity"],
      ["A", "Coat", "800 g", 2],
      [null, null, null, null],
      ["B", "Coat", null, null],
      ["Total", null, 3.2, 3],
    ]);
    expect(rows.map(({ grams, kind, quantity }) => [grams, kind, quantity])).toEqual([
      [800, null, 2],
      [null, "coat", null],
    ]);
  });
});
