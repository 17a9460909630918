import type { CellPosition } from "../../sheet/cellPosition";

/** One request as Today lists it. */
export interface RequestLine {
  /** The cell that the next news goes into. */
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly lender: string;
  /** Of the lender, where the lenders' table says it; "" where nothing does. So too the other texts. */
  readonly contact: string;
  readonly wanted: string;
  /** When and where to collect it. */
  readonly collect: string;
  readonly asked: number | null;
  readonly neededBy: number | null;
  /** Whether its table has a column in which what was collected is noted. */
  readonly isCollectionKept: boolean;
  /** Whether CHASEROWS lists it: unanswered for some days, or lent, not fetched, and needed soon or on a day that is past. */
  readonly isChased: boolean;
}
