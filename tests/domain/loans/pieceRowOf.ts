import type { PieceRow } from "../../../src/domain/loans/pieceRow";

/** A row with every field blank but those given. */
export function pieceRowOf(fields: Partial<PieceRow>): PieceRow {
  const blank = {
    row: 1,
    piece: null,
    description: null,
    kind: null,
    lender: null,
    look: null,
    talent: null,
    quantity: null,
    quantityBack: null,
    conditionOut: null,
    conditionBack: null,
    value: null,
    totalValue: null,
    currency: null,
    weight: null,
    out: null,
    due: null,
    extendedTo: null,
    back: null,
    shoot: null,
    settled: null,
  };
  return { ...blank, ...fields };
}
