import type { PieceRow } from "../../domain/loans/pieceRow";
import type { SheetTable } from "../../sheet/sheetTable";

/** A table of pieces with its rows read once, as Today looks at them many times. */
export interface PieceTable {
  readonly table: SheetTable;
  readonly rows: readonly PieceRow[];
}
