import { namePiece } from "../../today/namePiece";
import { fieldText } from "./fieldText";
import type { HeldPiece } from "./heldPieces";

/** Shorter names stand in too many other words. */
const SHORTEST_NAME = 3;

/** A sentence where a text that goes to the lender names somebody who wears a piece, since that is not the lender's to know. */
export function talentNamed({ row }: HeldPiece, held: readonly HeldPiece[]): readonly string[] {
  const texts = [row.description, row.conditionOut, row.conditionBack].map(fieldText).join(" ").toLowerCase();
  const words = new Set(texts.split(/[^\p{L}\p{N}]+/u));
  const names = new Set(held.map((piece) => fieldText(piece.row.talent)));
  const named = [...names].find((name) => name.length >= SHORTEST_NAME && words.has(name.toLowerCase()));
  return named === undefined ? [] : [`${namePiece(row)} names ${named}; a lender's slip should not: change the text.`];
}
