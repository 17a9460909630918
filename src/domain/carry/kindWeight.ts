import type { Problem } from "../problem";

/** What the pieces of one kind weigh together; a figure that a cell spoils is that cell's problem. */
export interface KindWeight {
  /** "Coat"; as typed where no known kind is named; null where none is named at all. */
  readonly kind: string | null;
  readonly pieces: number | Problem;
  readonly weighedGrams: number | Problem;
  /** Of the pieces that the sheet has no weight for, by what the kind typically weighs. */
  readonly estimatedGrams: number | Problem;
}
