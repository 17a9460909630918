import type { PieceRow } from "../../domain/loans/pieceRow";

/** How a row of pieces is called in a list: "104 ecru kilt", as far as number and description are there. */
export function namePiece(row: PieceRow): string {
  const parts = [row.piece, row.description].filter((part) => typeof part === "string");
  return parts.length === 0 ? `row ${row.row + 1}` : parts.join(" ");
}
