import { fail } from "../../fail";
import { isProblem } from "../../isProblem";
import type { Outcome } from "../../outcome";
import type { Problem } from "../../problem";
import { succeed } from "../../succeed";
import { gramsInUnit } from "../gramsInUnit";
import { pieceGrams } from "../pieceGrams";
import type { BagPiece } from "./bagPiece";
import { fewestBags } from "./fewestBags";
import type { PackedBags } from "./packedBags";

/** More than anybody carries; a quantity typed into the wrong column must not fill the sheet. */
const MOST_PIECES = 10_000;
const MILLIGRAMS = 1000;
/** A hundred tonnes: beyond it sums would no longer be exact. */
const MOST_MILLIGRAMS = 1e11;

/** What goes into one bag as one thing: a single piece, or all that is kept together. */
interface Thing {
  milligrams: number;
  readonly isGroup: boolean;
  problem: Problem | null;
}

/**
 * Pieces into as few bags as were found, none of them above the limit; one entry a single piece, in the order of the rows.
 *
 * A bag is compared with the limit in whole grams, so that two pounds and two of one pound are the same. A piece above the limit,
 * or that cannot be weighed, has its problem for a bag, and so has all that is kept together with it. `gramsPerUnit` is the unit in
 * which sentences say a weight. Problem: argument-not-usable for more than 10,000 pieces.
 */
export function packedBagsOf(rows: readonly BagPiece[], limitGrams: number, gramsPerUnit: number): Outcome<PackedBags> {
  const things: Thing[] = [];
  const groups = new Map<string, Thing>();
  const pieces: { label: BagPiece["label"]; grams: number | Problem; thing: Thing }[] = [];
  for (const row of rows) {
    const { label, together, quantity } = row;
    const grams = pieceGrams(row);
    const problem = [quantity, together, grams].find(isProblem) ?? null;
    const count = isProblem(quantity) ? 1 : quantity || 1;
    if (pieces.length + count > MOST_PIECES) return fail("argument-not-usable", tooMany(pieces.length + count));
    for (let piece = 0; piece < count; piece++) {
      let thing = typeof together === "string" ? groups.get(together) : undefined;
      if (thing === undefined) {
        things.push((thing = { milligrams: 0, isGroup: typeof together === "string", problem: null }));
        if (typeof together === "string") groups.set(together, thing);
      }
      thing.problem ??= problem;
      if (!isProblem(grams)) thing.milligrams += Math.round(grams * MILLIGRAMS);
      pieces.push({ label, grams, thing });
    }
  }

  // What rounds to the limit in whole grams is at the limit.
  const capacity = Math.min(Math.round(limitGrams) * MILLIGRAMS + MILLIGRAMS / 2 - 1, MOST_MILLIGRAMS);
  for (const thing of things)
    if (thing.milligrams > capacity) thing.problem ??= tooHeavy(thing, limitGrams, gramsPerUnit);
  const fitting = things.filter(({ problem }) => problem === null);
  const { bagOf, bagCount, leastBags } = fewestBags(
    fitting.map(({ milligrams }) => milligrams),
    capacity,
  );
  const bagOfThing = new Map(fitting.map((thing, index) => [thing, bagOf[index]!]));
  return succeed({
    pieces: pieces.map(({ label, grams, thing }) => ({
      label,
      grams,
      bag: thing.problem ?? bagOfThing.get(thing)!,
    })),
    bagCount,
    leastBags,
  });
}

function tooMany(count: number): { argument: string; given: string; expected: string } {
  return { argument: "rows", given: `${count} pieces`, expected: `at most ${MOST_PIECES} pieces at a time` };
}

function tooHeavy({ milligrams, isGroup }: Thing, limitGrams: number, gramsPerUnit: number): Problem {
  const needed = gramsInUnit(Math.ceil(milligrams / MILLIGRAMS), gramsPerUnit);
  return {
    reason: "argument-not-usable",
    facts: {
      argument: "limit",
      given: String(gramsInUnit(limitGrams, gramsPerUnit)),
      expected: `at least ${needed} for ${isGroup ? "the pieces kept together, or part them" : "this piece, or carry it apart"}`,
    },
  };
}
