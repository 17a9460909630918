/** Which days count: all, or only working days. */
export const COUNTINGS = ["calendar", "working"] as const;

/** One way of counting days. */
export type Counting = (typeof COUNTINGS)[number];
