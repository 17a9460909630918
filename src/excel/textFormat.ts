/** The number format under which Excel takes whatever is set for text. */
export const TEXT_FORMAT = "@";
