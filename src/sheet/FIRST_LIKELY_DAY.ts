/** 1950-01-01: below it a number under a date heading is a count and no day. */
export const FIRST_LIKELY_DAY = 18264;
