/** The most that a cover pays: an amount above 0, and its currency where the limit names one. */
export interface CoverLimit {
  readonly amount: number;
  readonly currency: string | null;
}
