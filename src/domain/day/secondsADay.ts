/** The length of a day in seconds: times of day are fractions of it. */
export const secondsADay = 86400;
