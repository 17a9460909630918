/** What a change may take, in minutes: at its quickest, as a rule, at its slowest. low <= likely <= high, and low < high. */
export interface ChangeRange {
  readonly low: number;
  readonly likely: number;
  readonly high: number;
}
