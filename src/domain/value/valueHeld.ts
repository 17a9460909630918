import type { FieldValue } from "../fieldValue";
import type { PieceRow } from "../loans/pieceRow";
import { tenThousandths } from "./tenThousandths";

const TEN_THOUSANDTHS_A_CENT = 100;

/**
 * The value of so many pieces of a row, in ten-thousandths; null where the row has no value.
 *
 * Value is for one piece. Where the sheet gives only the value of the whole row, part of the row is worth
 * its share, to the cent. A value of 0 is no value: nobody lends a piece that is worth nothing, and a
 * blank cell arrives as 0 from some hosts.
 */
export function valueHeld(piece: PieceRow, quantity: number): FieldValue<number> {
  const value = piece.value;
  if (typeof value === "number" && value !== 0) return tenThousandths(value) * quantity;
  if (typeof value === "object" && value !== null) return value;
  const total = piece.totalValue;
  if (typeof total !== "number") return total;
  if (total === 0) return null;
  const rowQuantity = piece.quantity || 1;
  if (typeof rowQuantity !== "number") return rowQuantity;
  if (quantity === rowQuantity) return tenThousandths(total);
  return Math.round((tenThousandths(total) * quantity) / rowQuantity / TEN_THOUSANDTHS_A_CENT) * TEN_THOUSANDTHS_A_CENT;
}
