import type { ResultTable } from "../resultTable";
import type { Clash } from "./clash";

/** Clashes as a table that spills, one row each. */
export function clashTable(found: readonly Clash[]): ResultTable {
  return {
    headings: ["Piece", "Look", "Other look", "Why"],
    formats: ["as is", "as is", "as is", "as is"],
    rows: found.map(({ piece, look, otherLook, why }) => [piece, look, otherLook, why]),
  };
}
