/** What a lender asks for lateness, or at most asks: an amount of money or a share of the value. */
export interface LateCharge {
  /** Money, or the share as a fraction: 0.02 is 2%. */
  readonly amount: number;
  readonly isShare: boolean;
  /** Asked once, however late; else for each day late. */
  readonly isOnce: boolean;
  /** The currency an amount names, if it names one. */
  readonly currency: string | null;
}
