/** Which days count: all, or only working days. */
export const COUNTINGS = ["calendar", "working"] as const;

export type Counting = (typeof COUNTINGS)[number];
