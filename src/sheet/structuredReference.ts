/** Characters of a heading that have a meaning inside brackets and are set off by an apostrophe. */
const SPECIAL = /['[\]#@]/g;
/** A heading with any other than letters, figures, spaces, points and underscores stands in brackets of its own behind @. */
const PLAIN = /^[\p{L}\p{N}_.]+$/u;

/** A whole column of a table without its heading, Loans[Date out], or its cell in the formula's own row, Loans[@[Date out]]. */
export function structuredReference(tableName: string, heading: string, isOwnRow: boolean): string {
  const escaped = heading.replace(SPECIAL, "'$&");
  if (!isOwnRow) return `${tableName}[${escaped}]`;
  return PLAIN.test(heading) ? `${tableName}[@${escaped}]` : `${tableName}[@[${escaped}]]`;
}
