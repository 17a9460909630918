import { isPieceNumber } from "./isPieceNumber";

/** The piece numbers in a cell that lists what is worn, parted by a comma, a semicolon, "&", "+" or a new line; what only describes a piece is left out. */
export function readPieceNumbers(text: string): readonly string[] {
  return text
    .split(/[,;&+\n]/)
    .map((part) => part.trim())
    .filter(isPieceNumber);
}
