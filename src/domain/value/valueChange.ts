/** By how much what is held changes on a day; money in ten-thousandths. */
export interface ValueChange {
  pieces: number;
  value: number;
  /** Pieces of which the sheet gives no value. */
  unvalued: number;
}
