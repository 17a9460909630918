/**
 * One day's work as whole numbers, made ready once so that many orders of its looks can be timed fast.
 *
 * Times are whole seconds from midnight before call (past midnight they go on counting), so that adding
 * never drifts: 09:30 is exactly 34,200. Looks, talents and sets are known by their index.
 */
export interface DayWork {
  readonly callSeconds: number;
  readonly looks: readonly WorkLook[];
  readonly talentCount: number;
  readonly chairs: number;
  readonly dressers: number;
  readonly cameras: number;
  /** What a camera needs to move from one set to another. */
  readonly crossingSeconds: number;
  /** Pieces that several looks share, known by their index. */
  readonly pieceCount: number;
  /** To undress a look and hand over a piece that the next one wears. */
  readonly handOverSeconds: number;
  /** null where no meal is kept. */
  readonly meal: MealRule | null;
}

/** When the meal is due to begin at the latest, and how long it is. */
export interface MealRule {
  readonly dueSeconds: number;
  readonly lengthSeconds: number;
}

/** One look as the schedule needs it. A preparation of 0 seconds is no step and needs nobody. */
export interface WorkLook {
  /** Everybody who wears it; empty where nobody is named, and then it waits for nobody. */
  readonly talents: readonly number[];
  /** When the last of its talents is there. */
  readonly thereSeconds: number;
  /** Which talent that is, or -1 where all are there at call. */
  readonly lastToArrive: number;
  readonly hairMakeupSeconds: number;
  readonly changeSeconds: number;
  /** Change by the look the talent comes from (its index); a look that is missing counts changeSeconds. null where none is given. */
  readonly changeSecondsFrom: ReadonlyMap<number, number> | null;
  readonly shootingSeconds: number;
  readonly makeupFirst: boolean;
  /** -1 where the set is not said: then the camera has nowhere to cross to. */
  readonly set: number;
  /** Looks whose shots must have ended before this one's begins. */
  readonly after: readonly number[];
  /** The pieces it shares with other looks: its change, or without one its shot, waits until they are handed over. */
  readonly pieces: readonly number[];
  /** The same number for all looks of the same talents, who hand nothing over but keep it on; another number for every look that names none. */
  readonly wearers: number;
  /** When its shot began, where that has happened already. */
  readonly shotAtSeconds: number | null;
}
