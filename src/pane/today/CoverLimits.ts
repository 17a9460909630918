/** The most that may be out at once, by currency ("" where the sheet names none). */
export type CoverLimits = ReadonlyMap<string, number>;
