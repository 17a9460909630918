import { readCell } from "./readCell";

/**
 * Whether a cell holds something. Blank, spaces and 0 (as some hosts send a blank cell) do not, nor does FALSE, which an
 * unticked box holds in a row that is still empty.
 */
export function isFilledCell(raw: unknown): boolean {
  // Above the space a first character is no blank; trimming every cell of a large table would cost more than reading it.
  if (typeof raw === "string") return (raw.charCodeAt(0) > 0x20 && raw.charCodeAt(0) < 0x7f) || raw.trim() !== "";
  if (typeof raw === "number") return raw !== 0;
  if (raw === null || raw === undefined || raw === false) return false;
  if (raw === true) return true;
  const cell = readCell(raw);
  return typeof cell === "object" ? cell !== null : isFilledCell(cell);
}
