import type { Problem } from "../problem";

/** What one lender has out with the stylist on a day, in one currency. A figure that depends on a cell that cannot be read is its problem. */
export interface LenderTotal {
  /** As first spelled; null for pieces with no lender; a problem where the lender's cell cannot be read. */
  readonly lender: string | null | Problem;
  readonly piecesOut: number | Problem;
  readonly valueOut: number | Problem;
  /** The earliest due day on or after the as-of day, or null. */
  readonly nextDue: number | null | Problem;
  readonly latePieces: number | Problem;
  readonly lateValue: number | Problem;
  /** 0 where nothing is late. */
  readonly mostDaysLate: number | Problem;
  readonly piecesWithoutDue: number | Problem;
  readonly piecesWithoutValue: number | Problem;
  readonly currency: string | null | Problem;
}
