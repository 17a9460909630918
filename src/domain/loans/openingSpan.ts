/** From when until when a door is open, as fractions of a day; both ends belong to it, and `until` may pass 1 after midnight. */
export interface OpeningSpan {
  readonly from: number;
  readonly until: number;
}
