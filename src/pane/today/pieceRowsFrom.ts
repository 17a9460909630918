import type { PieceRow } from "../../domain/loans/pieceRow";
import type { PieceRows } from "../../domain/loans/pieceRows";

/** Rows already read, in the form the arithmetic takes them. */
export function pieceRowsFrom(rows: readonly PieceRow[]): PieceRows {
  return {
    count: rows.length,
    at: (index) => rows[index] as PieceRow,
    hasCurrencies: rows.some(({ currency }) => currency !== null),
  };
}
