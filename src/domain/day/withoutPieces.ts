import type { Look } from "./look";

/** A look that shares nothing: planned so, a look is changed when it would like to be, and overlaps show. */
export function withoutPieces(look: Look): Look {
  return look.pieces.length === 0 ? look : { ...look, pieces: [] };
}
