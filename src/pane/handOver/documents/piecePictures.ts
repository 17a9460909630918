import { namePiece } from "../../today/namePiece";
import type { PaperPicture } from "../paper/Paper";
import { picturesOfPieces } from "../pictures/picturesOfPieces";
import { picturesOfRows } from "../pictures/picturesOfRows";
import { cellText } from "../../cellText";
import { fieldText } from "./fieldText";
import type { HandOverSource } from "./HandOverSource";
import type { HeldPiece } from "./heldPieces";

/** The pictures of some pieces, each by the piece's name: those picked by hand for it first, then those that lie over its row. */
export function piecePictures(
  pieces: readonly HeldPiece[],
  { pictures, sheetPictures }: Pick<HandOverSource, "pictures" | "sheetPictures">,
): readonly PaperPicture[] {
  if (pictures.length === 0 && sheetPictures.length === 0) return [];
  const ofTable = new Map(
    [...new Set(pieces.map(({ table }) => table))].map((table) => [table, picturesOfRows(table, sheetPictures)]),
  );
  return pieces.flatMap(({ table, row }) => {
    const picked = picturesOfPieces(
      { number: fieldText(row.piece), photo: cellText(table, row.row, "photo") },
      pictures,
    );
    const over = ofTable.get(table)?.get(row.row) ?? [];
    return [...picked, ...over].map(({ dataUrl }) => ({ dataUrl, says: namePiece(row) }));
  });
}
