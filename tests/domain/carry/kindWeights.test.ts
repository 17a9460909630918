import fc from "fast-check";
import type { CarriedPiece } from "../../../src/domain/carry/carriedPieces";
import { carriedGrams } from "../../../src/domain/carry/carriedGrams";
import { kindWeights } from "../../../src/domain/carry/kindWeights";
import { isProblem } from "../../../src/domain/isProblem";
import type { Problem } from "../../../src/domain/problem";
import { nameKey } from "../../../src/sheet/nameKey";

function piece(given: Partial<CarriedPiece>): CarriedPiece {
  return {
    grams: null,
    isGuess: false,
    kind: null,
    quantity: null,
    where: "Kind, row 2",
    named: "",
    isNamedAsKind: false,
    ...given,
  };
}

function weightsOf(list: readonly CarriedPiece[]): ReturnType<typeof kindWeights> {
  return kindWeights({ count: list.length, at: (index) => list[index]! }, nameKey);
}

describe("kindWeights", () => {
  it("counts what the sheet itself calls a guess as estimated", () => {
    const pieces = [piece({ grams: 1200, kind: "coat" }), piece({ grams: 2000, isGuess: true, kind: "coat" })];
    expect(weightsOf(pieces)).toEqual([{ kind: "Coat", pieces: 2, weighedGrams: 1200, estimatedGrams: 2000 }]);
    expect(carriedGrams({ count: 2, at: (index) => pieces[index]! })).toEqual({
      ok: true,
      value: { weighedGrams: 1200, estimatedGrams: 2000 },
    });
  });

  it("keeps what is estimated apart from what was weighed", () => {
    expect(
      weightsOf([
        piece({ grams: 1200, kind: "coat", named: "Puffer", isNamedAsKind: true }),
        piece({ kind: "dress", quantity: 2 }),
        piece({ kind: "coat", named: "Mac", isNamedAsKind: true }),
      ]),
    ).toEqual([
      { kind: "Coat", pieces: 2, weighedGrams: 1200, estimatedGrams: 950 },
      { kind: "Dress", pieces: 2, weighedGrams: 0, estimatedGrams: 600 },
    ]);
  });

  it("has a row as typed for a kind that is not known, and one, last, for pieces of none", () => {
    const rows = weightsOf([
      piece({ grams: 10, named: "Nice thing" }),
      piece({ grams: 300, named: "gizmo", isNamedAsKind: true }),
      piece({ grams: 200, named: "GIZMO", isNamedAsKind: true }),
      piece({ grams: 100, kind: "other", named: "Accessory", isNamedAsKind: true }),
    ]);
    expect(rows.map(({ kind, pieces, weighedGrams }) => [kind, pieces, weighedGrams])).toEqual([
      ["Gizmo", 2, 500],
      ["Accessory", 1, 100],
      [null, 1, 10],
    ]);
  });

  it("lets a cell that cannot be read spoil the figures that depend on it, and no other", () => {
    const problem: Problem = { reason: "error-in-cell", facts: { argument: "Weight, row 2", given: "#N/A" } };
    const [coat, dress, noKind] = weightsOf([
      piece({ grams: problem, kind: "coat" }),
      piece({ kind: "coat" }),
      piece({ grams: 300, kind: "dress", quantity: problem }),
      piece({ kind: problem }),
    ]);
    expect(coat).toEqual({ kind: "Coat", pieces: 2, weighedGrams: problem, estimatedGrams: 950 });
    expect(dress).toEqual({ kind: "Dress", pieces: problem, weighedGrams: problem, estimatedGrams: 0 });
    expect(noKind).toEqual({ kind: null, pieces: 1, weighedGrams: 0, estimatedGrams: problem });
  });

  it("says of a piece with neither a weight nor a known kind which row it is", () => {
    const [row] = weightsOf([piece({ named: "Gizmo", isNamedAsKind: true, where: "Kind, row 9" })]);
    expect(row!.estimatedGrams).toMatchObject({ facts: { argument: "Kind, row 9", given: "Gizmo" } });
  });

  it("adds up to what carriedGrams gives, part by part", () => {
    const pieces = fc.array(
      fc.record({
        grams: fc.option(fc.integer({ min: 1, max: 4000 })),
        kind: fc.constantFrom("coat" as const, "dress" as const, "shoes" as const),
        quantity: fc.option(fc.integer({ min: 0, max: 5 })),
      }),
      { maxLength: 40 },
    );
    fc.assert(
      fc.property(pieces, (given) => {
        const list = given.map(piece);
        const rows = weightsOf(list);
        const sum = (field: "pieces" | "weighedGrams" | "estimatedGrams"): number =>
          rows.reduce((total, row) => total + (isProblem(row[field]) ? NaN : row[field]), 0);
        const carried = carriedGrams({ count: list.length, at: (index) => list[index]! });
        expect(carried).toEqual({
          ok: true,
          value: { weighedGrams: sum("weighedGrams"), estimatedGrams: sum("estimatedGrams") },
        });
        expect(sum("pieces")).toBe(given.reduce((count, { quantity }) => count + (quantity || 1), 0));
        expect(rows.length).toBe(new Set(given.map(({ kind }) => kind)).size);
      }),
    );
  });
});
