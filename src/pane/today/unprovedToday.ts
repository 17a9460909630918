import type { Finding } from "../../checks/finding";
import type { CellPosition } from "../../sheet/cellPosition";
import { namePiece } from "./namePiece";
import type { PieceTable } from "./PieceTable";

/** A piece that is back with nothing to show for it. */
export interface UnprovedLine {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly name: string;
  readonly sentence: string;
}

const PROOFS = ["returnedHow", "tracking", "receivedBy"] as const;

/**
 * The pieces that the sheet check finds back without proof, so that what is ignored there is left alone here; null where no table of
 * pieces keeps a proof of return, or the check has not ended.
 */
export function unprovedToday(
  pieces: readonly PieceTable[],
  findings: readonly Finding[] | null,
): readonly UnprovedLine[] | null {
  const isKept = pieces.some(
    ({ table: { columnOf } }) =>
      columnOf["back"] !== undefined && PROOFS.some((field) => columnOf[field] !== undefined),
  );
  if (findings === null || !isKept) return null;
  return findings
    .filter(({ ruleId }) => ruleId === "returnNotProved")
    .map(({ at, sheetName, message }) => ({ at, sheetName, name: nameAt(pieces, at), sentence: message }));
}

function nameAt(pieces: readonly PieceTable[], { sheetId, row }: CellPosition): string {
  for (const { table, rows } of pieces) {
    if (table.sheetId !== sheetId) continue;
    const piece = rows.find((each) => table.firstRow + each.row === row);
    if (piece !== undefined) return namePiece(piece);
  }
  return `row ${row + 1}`;
}
