/** The three things done with a look, in the order of `stepIndex`. */
export const HAIR_MAKEUP = 0;
export const CHANGE = 1;
export const SHOT = 2;
export const STEPS_A_LOOK = 3;

/**
 * What a step waited for.
 *
 * preparation: the step before it of the same look. talent: somebody was still on an earlier look.
 * chair, dresser, camera: all of them were still on earlier looks. crossing: the camera came from another set.
 * piece: an earlier look still wore a piece of this one, or was handing it over. after: a look that must come before. order: the shot before it had not begun. shot at: it has happened already.
 */
export type WaitKind =
  | "call"
  | "arrival"
  | "preparation"
  | "talent"
  | "chair"
  | "dresser"
  | "camera"
  | "crossing"
  | "piece"
  | "after"
  | "order"
  | "meal"
  | "shot at";

/** The meal, from its beginning up to but not with its end. */
export interface MealSpan {
  readonly fromSeconds: number;
  readonly untilSeconds: number;
}

/**
 * When each step of each look is done, at `look * STEPS_A_LOOK + step`.
 *
 * A step of no length has the same from and until. `waitLook` and `waitTalent` are -1 where none is meant.
 */
export interface DaySchedule {
  readonly fromSeconds: readonly number[];
  readonly untilSeconds: readonly number[];
  readonly waitKind: readonly WaitKind[];
  readonly waitLook: readonly number[];
  readonly waitTalent: readonly number[];
  /** Which of the chairs, dressers or cameras did it, from 0; -1 for a step of no length. */
  readonly station: readonly number[];
  /** null where no meal is kept, or where the day is over before it is due. */
  readonly meal: MealSpan | null;
  /** The end of the last shot; the call where there is no look. */
  readonly endSeconds: number;
}
