import fc from "fast-check";
import type { CarriedPiece, CarriedPieces } from "../../../src/domain/carry/carriedPieces";
import { carriedWeight } from "../../../src/domain/carry/carriedWeight";
import type { GarmentKind } from "../../../src/domain/carry/garmentKind";
import { typicalGrams } from "../../../src/domain/carry/typicalGrams";
import type { Problem } from "../../../src/domain/problem";
import { sayProblem } from "../../../src/domain/wording";

const GRAMS_PER_POUND = 453.59237;

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

function carriedPieces(list: readonly CarriedPiece[]): CarriedPieces {
  return { count: list.length, at: (index) => list[index]! };
}

describe("carriedWeight", () => {
  it("takes the sheet's weight before the typical one, times the quantity", () => {
    const pieces = carriedPieces([piece({ grams: 1200, kind: "dress" }), piece({ kind: "dress", quantity: 3 })]);
    expect(carriedWeight(pieces, 1000)).toEqual({ ok: true, value: (1200 + 3 * typicalGrams("dress")!) / 1000 });
  });

  it("counts a quantity that is blank or 0 as 1", () => {
    for (const quantity of [null, 0, 1])
      expect(carriedWeight(carriedPieces([piece({ grams: 500, quantity })]), 1000)).toEqual({ ok: true, value: 0.5 });
  });

  it("is 0 for no rows", () => expect(carriedWeight(carriedPieces([]), 1000)).toEqual({ ok: true, value: 0 }));

  it("gives whole pounds back whole", () => {
    for (let pounds = 1; pounds <= 200; pounds++)
      expect(carriedWeight(carriedPieces([piece({ grams: pounds * GRAMS_PER_POUND })]), GRAMS_PER_POUND)).toEqual({
        ok: true,
        value: pounds,
      });
  });

  it("agrees with an exact sum in milligrams, in any order of the rows", () => {
    const some = fc.array(
      fc.record({ milligrams: fc.integer({ min: 0, max: 5_000_000 }), quantity: fc.integer({ min: 1, max: 9 }) }),
      { maxLength: 60 },
    );
    fc.assert(
      fc.property(some, (rows) => {
        const exact = rows.reduce((sum, row) => sum + BigInt(row.milligrams) * BigInt(row.quantity), 0n);
        const list = rows.map((row) => piece({ grams: row.milligrams / 1000, quantity: row.quantity }));
        for (const pieces of [list, [...list].reverse()]) {
          const total = carriedWeight(carriedPieces(pieces), 1000);
          expect(total.ok && total.value).toBeCloseTo(Number(exact) / 1e6, 8);
        }
      }),
    );
  });

  it("names the row and the kind that has no known weight, and what would help", () => {
    const say = (given: Partial<CarriedPiece>): string => {
      const total = carriedWeight(carriedPieces([piece(given)]), 1000);
      return total.ok ? "no problem" : sayProblem(total.problem);
    };
    const remedy = "give the weight in that row, or a kind such as coat, dress, shoes or bag.";
    expect(say({ named: "Gizmo" })).toBe(`Kind, row 2: "Gizmo" cannot be used; ${remedy}`);
    expect(say({ named: "Accessory", kind: "other" })).toBe(`Kind, row 2: "Accessory" cannot be used; ${remedy}`);
    expect(say({ where: "Weight, row 2" })).toBe(`Weight, row 2 is blank; ${remedy}`);
  });

  it("hands on a cell that cannot be read", () => {
    const problem: Problem = { reason: "error-in-cell", facts: { argument: "Weight, row 2", given: "#N/A" } };
    for (const given of [{ grams: problem }, { kind: problem }, { grams: 100, quantity: problem }])
      expect(carriedWeight(carriedPieces([piece(given)]), 1000)).toEqual({ ok: false, problem });
  });

  it("knows the typical weight of every kind but the one that can be anything", () => {
    const kinds: readonly GarmentKind[] = [
      "coat",
      "jacket",
      "dress",
      "top",
      "shirt",
      "knit",
      "trousers",
      "skirt",
      "suit",
      "shoes",
      "boots",
    ];
    const small: readonly GarmentKind[] = [
      "bag",
      "hat",
      "belt",
      "jewellery",
      "scarf",
      "hosiery",
      "underwear",
      "swimwear",
      "glasses",
      "gloves",
    ];
    for (const kind of [...kinds, ...small]) expect([kind, typicalGrams(kind)! > 0]).toEqual([kind, true]);
    expect(typicalGrams("other")).toBeNull();
  });
});
