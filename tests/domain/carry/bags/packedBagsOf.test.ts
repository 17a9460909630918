import type { BagPiece } from "../../../../src/domain/carry/bags/bagPiece";
import { bagsTable } from "../../../../src/domain/carry/bags/bagsTable";
import { packedBagsOf } from "../../../../src/domain/carry/bags/packedBagsOf";
import { isProblem } from "../../../../src/domain/isProblem";
import type { Problem } from "../../../../src/domain/problem";
import { sayProblem } from "../../../../src/domain/wording";

const GRAMS_PER_KG = 1000;
const GRAMS_PER_POUND = 453.59237;

function row(label: string, grams: BagPiece["grams"], given: Partial<BagPiece> = {}): BagPiece {
  return {
    label,
    grams,
    isGuess: false,
    kind: null,
    quantity: null,
    where: `Kind of ${label}`,
    named: "",
    isNamedAsKind: false,
    together: null,
    ...given,
  };
}

/** Each piece with its bag; a problem as its sentence. */
function packed(rows: readonly BagPiece[], limitGrams: number, gramsPerUnit = GRAMS_PER_KG): unknown[][] {
  const bags = packedBagsOf(rows, limitGrams, gramsPerUnit);
  if (!bags.ok) return [[sayProblem(bags.problem)]];
  return bagsTable(bags.value, gramsPerUnit).rows.map((cells) =>
    cells.map((cell) => (isProblem(cell) ? sayProblem(cell) : cell)),
  );
}

describe("packedBagsOf", () => {
  it("has one row a single piece in sheet order, and numbers bags as they first appear", () => {
    expect(packed([row("A", 3000), row("B", 2000, { quantity: 2 }), row("C", 7000)], 10_000)).toEqual([
      ["A", 3, 1],
      ["B", 2, 2],
      ["B", 2, 2],
      ["C", 7, 1],
    ]);
  });

  it("compares whole grams: what rounds to the limit is at it", () => {
    const two = [row("A", GRAMS_PER_POUND), row("B", GRAMS_PER_POUND)];
    expect(packed(two, 2 * GRAMS_PER_POUND, GRAMS_PER_POUND).map((cells) => cells[2])).toEqual([1, 1]);
    const bagsOf = (grams: number): unknown[] =>
      packed([row("A", 500), row("B", grams)], 1000).map((cells) => cells[2]);
    expect(bagsOf(500.4)).toEqual([1, 1]);
    expect(bagsOf(500.5)).toEqual([1, 2]);
  });

  it("packs ten pieces of a pound into a bag of ten pounds", () => {
    const ten = [row("A", GRAMS_PER_POUND, { quantity: 20 })];
    expect(new Set(packed(ten, 10 * GRAMS_PER_POUND, GRAMS_PER_POUND).map((cells) => cells[2])).size).toBe(2);
  });

  it("keeps pieces together that say the same, wherever they stand", () => {
    expect(
      packed([row("A", 4000, { together: "x" }), row("B", 6000), row("C", 5000, { together: "x" })], 10_000).map(
        (cells) => cells[2],
      ),
    ).toEqual([1, 2, 1]);
  });

  it("has the error in Bag for a piece above the limit, and for all of a group above it; the others are packed", () => {
    const rows = [
      row("A", 12_000),
      row("B", 2000),
      row("C", 6000, { together: "x" }),
      row("D", 5000, { together: "x" }),
    ];
    const tooHeavy = 'limit: "10" cannot be used; give at least 12 for this piece, or carry it apart.';
    const tooHeavyTogether = 'limit: "10" cannot be used; give at least 11 for the pieces kept together, or part them.';
    expect(packed(rows, 10_000)).toEqual([
      ["A", 12, tooHeavy],
      ["B", 2, 1],
      ["C", 6, tooHeavyTogether],
      ["D", 5, tooHeavyTogether],
    ]);
  });

  it("has the error in Weight and Bag for a piece that cannot be weighed, and in the Bag of what goes with it", () => {
    const sentence = "Kind of A is blank; give the weight in that row, or a kind such as coat, dress, shoes or bag.";
    expect(
      packed([row("A", null, { together: "x" }), row("B", 1000, { together: "x" }), row("C", 500)], 10_000),
    ).toEqual([
      ["A", sentence, sentence],
      ["B", 1, sentence],
      ["C", 0.5, 1],
    ]);
  });

  it("has the error in Bag for a quantity that cannot be read", () => {
    const problem: Problem = { reason: "error-in-cell", facts: { argument: "Quantity, row 2", given: "#N/A" } };
    expect(packed([row("A", 1000, { quantity: problem })], 10_000)).toEqual([["A", 1, sayProblem(problem)]]);
  });

  it("tells how few bags there could be, for whoever shows it", () => {
    const bags = packedBagsOf([row("A", 6000, { quantity: 3 })], 10_000, GRAMS_PER_KG);
    expect(bags).toMatchObject({ ok: true, value: { bagCount: 3, leastBags: 3 } });
  });

  it("refuses more pieces than anybody carries", () => {
    expect(packed([row("A", 1, { quantity: 9999 }), row("B", 1, { quantity: 2 })], 1000)).toEqual([
      ['rows: "10001 pieces" cannot be used; give at most 10000 pieces at a time.'],
    ]);
  });

  it("packs nothing into no bag", () => expect(packed([], 1000)).toEqual([]));
});
