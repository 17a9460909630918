/** Where a day that falls on a closed one moves: to the working day before, to the one after, or nowhere. */
export const ROLLS = ["back", "on", "none"] as const;

/** One way to move a day off a closed one. */
export type Roll = (typeof ROLLS)[number];
