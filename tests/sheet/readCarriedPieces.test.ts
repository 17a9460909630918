import { carriedWeight } from "../../src/domain/carry/carriedWeight";
import { sayProblem } from "../../src/domain/wording";
import { readCarriedPieces } from "../../src/sheet/readCarriedPieces";
import { readTable } from "../../src/sheet/readTable";

function carriedKg(cells: unknown[][], gramsPerBareUnit = 1000): number | string {
  const table = readTable({ cells, kind: "pieces", needs: [["weight", "kind", "description"]] });
  if (!table.ok) return sayProblem(table.problem);
  const total = carriedWeight(readCarriedPieces(table.value, gramsPerBareUnit), 1000);
  return total.ok ? total.value : sayProblem(total.problem);
}

describe("readCarriedPieces", () => {
  it("reads weights in the unit their cell names", () => {
    expect(
      carriedKg([
        ["Piece", "Weight"],
        ["a", "1.2kg"],
        ["b", "800 g"],
        ["c", "0,5 kg"],
      ]),
    ).toBe(2.5);
    expect(
      carriedKg([
        ["Piece", "Weight"],
        ["a", "2 lb"],
      ]),
    ).toBe(0.90718474);
    expect(
      carriedKg([
        ["Piece", "Weight"],
        ["a", "16 oz"],
      ]),
    ).toBe(0.45359237);
  });

  it("reads bare numbers in the unit of the heading, else in the unit asked for", () => {
    expect(
      carriedKg([
        ["Piece", "Weight (g)"],
        ["a", 800],
        ["b", "1 kg"],
      ]),
    ).toBe(1.8);
    expect(
      carriedKg(
        [
          ["Piece", "Weight"],
          ["a", 800],
        ],
        1,
      ),
    ).toBe(0.8);
    expect(
      carriedKg([
        ["Piece", "Weight"],
        ["a", 0.8],
      ]),
    ).toBe(0.8);
  });

  it("takes a weight that is blank or 0 from the kind, and a blank kind from the description", () => {
    for (const blank of [null, "", 0, undefined])
      expect(
        carriedKg([
          ["Piece", "Description", "Kind", "Weight"],
          ["a", "Silk", "Coat", blank],
          ["b", "Long wool coat", blank, blank],
        ]),
      ).toBe(1.9);
    expect(
      carriedKg([
        ["Piece", "Kind"],
        ["a", "robe"],
        ["b", "Abendkleid"],
      ]),
    ).toBe(0.6);
  });

  it("does not look at the description where a kind is filled but unknown", () => {
    expect(
      carriedKg([
        ["Piece", "Description", "Kind", "Weight"],
        ["a", "Wool coat", "Gizmo", null],
      ]),
    ).toContain('Kind, row 2: "Gizmo"');
  });

  it("counts every row passed, whether it is back or settled", () => {
    expect(
      carriedKg([
        ["Piece", "Weight", "Out", "Back", "Settled"],
        ["a", 1, 46083, 46090, ""],
        ["b", 1, 46083, "", "lost"],
        ["c", 1, "", "", ""],
      ]),
    ).toBe(3);
  });

  it("passes over blank rows and a totals row", () => {
    expect(
      carriedKg([
        ["Piece", "Kind", "Weight"],
        ["a", "Coat", 1],
        [null, null, null],
        ["b", "Dress", 0.4],
        ["Total", null, 1.4],
      ]),
    ).toBe(1.4);
  });

  it("names the row of a weight that cannot be read", () => {
    expect(
      carriedKg([
        ["Piece", "Weight"],
        ["a", 1],
        ["b", "heavy"],
      ]),
    ).toContain('Weight, row 3: "heavy" cannot be used');
    expect(
      carriedKg([
        ["Piece", "Weight"],
        ["a", -1],
      ]),
    ).toContain("Weight, row 2");
    expect(
      carriedKg([
        ["Piece", "Weight"],
        ["a", null],
      ]),
    ).toContain("Weight, row 2 is blank");
  });
});
