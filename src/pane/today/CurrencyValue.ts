import type { PieceRow } from "../../domain/loans/pieceRow";
import type { UntoldLine } from "./untoldLine";

/** What is held in one currency on the day, the pieces that come back that day counted. */
export interface CurrencyValue {
  /** "" where the sheet names none. */
  readonly currency: string;
  /** As VALUEBYDAY and VALUEOUT with countBackDay give it over the rows of this currency that can be read. */
  readonly valueOut: number;
  readonly piecesHeld: number;
  readonly piecesUnvalued: number;
  /** Held rows left out, since their value or a day that decides cannot be read: the true figure is higher. */
  readonly unread: readonly UntoldLine[];
  /** The rows that all of this is counted from. */
  readonly rows: readonly PieceRow[];
  /** One figure a day, from the first to the last day of the picture. */
  readonly days: readonly { readonly day: number; readonly valueOut: number }[];
}
