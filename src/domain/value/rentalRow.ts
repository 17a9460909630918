import type { FieldValue } from "../fieldValue";
import type { PieceRow } from "../loans/pieceRow";

/** What one row of a pieces table costs a job; amounts are for the whole row, in its currency. */
export interface RentalRow {
  readonly job: FieldValue<string>;
  readonly currency: FieldValue<string>;
  readonly rentalFee: FieldValue<number>;
  readonly deposit: FieldValue<number>;
  /** Whether the lender still has the deposit depends on these. */
  readonly piece: Pick<PieceRow, "row" | "out" | "back" | "settled" | "quantity" | "quantityBack">;
}
