/** One stretch of a row: something done, or a look that waits between two things done. Times are fractions of a day. */
export interface DayBar {
  readonly kind: "make-up" | "change" | "shot" | "wait";
  readonly from: number;
  readonly until: number;
  /** The look's number as typed. */
  readonly look: string;
  /** What is done, in words: "change, look 3"; of a wait what for: "look 3 waits for camera, look 2". */
  readonly said: string;
}

/** A talent, or one of the dressers, chairs and cameras, through the day. */
export interface DayRow {
  readonly name: string;
  readonly isTalent: boolean;
  /** Soonest first. */
  readonly bars: readonly DayBar[];
}
