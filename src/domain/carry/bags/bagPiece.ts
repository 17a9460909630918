import type { FieldValue } from "../../fieldValue";
import type { ResultCell } from "../../resultTable";
import type { CarriedPiece } from "../carriedPieces";

/** One row of pieces to pack. */
export interface BagPiece extends CarriedPiece {
  /** What the piece is called, as it stands in the sheet. */
  readonly label: ResultCell;
  /** Rows that say the same here go into one bag; null where the piece may go anywhere. */
  readonly together: FieldValue<string>;
}
