/**
 * A run to be put in order, in whole milliseconds so that sums of times are exact. Index 0 is the start, 1 and on are the stops.
 */
export interface Run {
  /** How many stops there are beside the start. */
  readonly stopCount: number;
  /** From row to column, not counting what is done at either. */
  readonly travelMs: readonly (readonly number[])[];
  /** How long the visit takes at each stop; 0 at the start. */
  readonly visitMs: readonly number[];
  /** When the visit at each stop may begin: from and until, from and until, rising and apart, both ends included. */
  readonly beginMs: readonly (readonly number[])[];
  /** The urgency of each stop where not all can be met: 0 goes first. */
  readonly rank: readonly number[];
  /** When the start is left. */
  readonly leaveMs: number;
  /** By when one must be back at the start; Infinity where it does not matter. */
  readonly backByMs: number;
  /** Whether the run ends at the start. */
  readonly returns: boolean;
}
