import { isProblem } from "../isProblem";
import type { Problem } from "../problem";
import type { CarriedPiece, CarriedPieces } from "./carriedPieces";
import type { KindWeight } from "./kindWeight";
import { pieceGrams } from "./pieceGrams";

interface Tally {
  readonly kind: string | null;
  pieces: number | Problem;
  weighedGrams: number | Problem;
  estimatedGrams: number | Problem;
}

/**
 * What the rows weigh, kind by kind in the order first seen, with what is estimated kept apart from what was weighed.
 *
 * Words for one kind are one row ("Puffer" and "Overcoat" are coats). A kind that is not known has a row as typed, where `nameKey`
 * gives two spellings the same key; pieces of no kind stand last. The pieces must have been read with all their kinds.
 */
export function kindWeights(pieces: CarriedPieces, nameKey: (name: string) => string): readonly KindWeight[] {
  const tallies = new Map<string, Tally>();
  // The spelling as typed is tried first, so that its key is worked out once.
  const bySpelling = new Map<string, Tally>();
  const noKind = newTally(null);
  for (let index = 0; index < pieces.count; index++) {
    const piece = pieces.at(index);
    const spelling = spellingOf(piece);
    let tally = spelling === "" ? noKind : bySpelling.get(spelling);
    if (tally === undefined) {
      const key = nameKey(spelling) || spelling;
      tally = tallies.get(key) ?? newTally(spelling.charAt(0).toUpperCase() + spelling.slice(1));
      tallies.set(key, tally);
      bySpelling.set(spelling, tally);
    }
    addPiece(tally, piece);
  }
  return noKind.pieces === 0 ? [...tallies.values()] : [...tallies.values(), noKind];
}

/** The known kind, else what is typed as the kind, else "". */
function spellingOf({ kind, named, isNamedAsKind }: CarriedPiece): string {
  if (typeof kind === "string" && kind !== "other") return kind;
  return isNamedAsKind ? named : "";
}

function newTally(kind: string | null): Tally {
  return { kind, pieces: 0, weighedGrams: 0, estimatedGrams: 0 };
}

function addPiece(tally: Tally, piece: CarriedPiece): void {
  const { quantity } = piece;
  const grams = pieceGrams(piece);
  // A weight that cannot be read was weighed all the same.
  const field = piece.grams === null || piece.isGuess ? "estimatedGrams" : "weighedGrams";
  const count = isProblem(quantity) ? quantity : quantity || 1;
  tally.pieces = sumOf(tally.pieces, count);
  const all = isProblem(grams) ? grams : isProblem(count) ? count : grams * count;
  tally[field] = sumOf(tally[field], all);
}

/** The sum, or the first problem of the two. */
function sumOf(one: number | Problem, other: number | Problem): number | Problem {
  if (isProblem(one)) return one;
  return isProblem(other) ? other : one + other;
}
