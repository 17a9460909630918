/** Work as a network: activities that need one another's ends, and shares of what there is of each resource. */
export interface Project {
  readonly activities: readonly Activity[];
  /** By resource: how much of it there is at any time. */
  readonly capacities: readonly number[];
}

/** One activity; it is not interrupted. Times are whole numbers of any one unit. */
export interface Activity {
  readonly length: number;
  /** It does not begin before then. */
  readonly releasedAt: number;
  /** The activities, by index, that must have ended. */
  readonly before: readonly number[];
  /** By resource: how much of it is needed all the while; never more than its capacity. */
  readonly needs: readonly number[];
}
