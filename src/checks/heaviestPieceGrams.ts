/** More than one piece on a hanger ever weighs, and more than a person should lift: common practice, no source. */
export const heaviestPieceGrams = 30_000;
