import { sayTerms } from "../domain/dates/terms/sayTerms";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readTerms } from "../sheet/readTerms";

/** What return terms, as a cell holds them, are read as, in plain words ("3 working days after the shoot"); null for a blank cell. */
export function sayTermsRead(raw: unknown, argument: string): Outcome<string | null> {
  const terms = readTerms(raw, argument);
  return terms.ok && terms.value !== null ? succeed(sayTerms(terms.value)) : (terms as Outcome<null>);
}
