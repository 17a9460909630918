/** Where a day that falls on a closed one moves: to the working day before, to the one after, or nowhere. */
export const ROLLS = ["back", "on", "none"] as const;

export type Roll = (typeof ROLLS)[number];
