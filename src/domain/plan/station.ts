/** Several of one thing that serve one look at a time: the chairs, the dressers or the cameras. */
export interface Station {
  /** When each is free again after all that it was given so far. */
  readonly freeAtSeconds: number[];
  /** The look each served last, -1 before the first. */
  readonly lastLook: number[];
  /** The set each served last, -1 before the first. */
  readonly lastSet: number[];
}
