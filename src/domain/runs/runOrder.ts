/** Stops in the order in which they are met, and what that comes to. */
export interface RunOrder {
  /** Indices of a Run's stops; those that are not here are not met. */
  readonly order: readonly number[];
  /** When the last visit ends, or the start is reached again where the run returns. */
  readonly endMs: number;
  readonly travelMs: number;
  /** Whether it is sure that no order is better; else it is the best one found. */
  readonly isProved: boolean;
}
