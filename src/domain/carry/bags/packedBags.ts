import type { Problem } from "../../problem";
import type { ResultCell } from "../../resultTable";

/** One single piece and the bag it goes into, numbered from 1; a cell that cannot be worked out is its problem. */
interface PackedPiece {
  readonly label: ResultCell;
  readonly grams: number | Problem;
  readonly bag: number | Problem;
}

/** Pieces packed into bags. */
export interface PackedBags {
  readonly pieces: readonly PackedPiece[];
  readonly bagCount: number;
  /** No packing of the pieces that have a bag needs fewer; equal to bagCount where that is proved to be the fewest. */
  readonly leastBags: number;
}
