/** The time at which something is over that cannot be done. */
export const never = Infinity;
