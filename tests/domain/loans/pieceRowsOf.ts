import type { PieceRow } from "../../../src/domain/loans/pieceRow";
import type { PieceRows } from "../../../src/domain/loans/pieceRows";
import { pieceRowOf } from "./pieceRowOf";

/** Rows as a table would give them, numbered from 1 as under a heading row. */
export function pieceRowsOf(rows: readonly Partial<PieceRow>[], hasCurrencies = false): PieceRows {
  const filled = rows.map((fields, index) => pieceRowOf({ row: index + 1, ...fields }));
  return { count: filled.length, at: (index) => filled[index]!, hasCurrencies };
}
