import { headingWords } from "./headingWords";

/** Whether two headings say the same: case, accents, punctuation, spacing and plurals aside. */
export function sameHeading(one: string, other: string): boolean {
  if (one.trim() === other.trim()) return true;
  const words = headingWords(one).join(" ");
  return words !== "" && words === headingWords(other).join(" ");
}
