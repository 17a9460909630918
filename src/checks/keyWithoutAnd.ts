import { nameKey } from "../sheet/nameKey";

/** Such a word between two others, in the five languages of the headings; "&" and "+" leave no trace in a key anyway. */
const AND = /(?<=\S\s+)(?:and|et|und|y|e)(?=\s+\S)/giu;

/** The key that "Orrin & Vale", "Orrin and Vale" and "Orrin + Vale" share. */
export function keyWithoutAnd(name: string): string {
  return nameKey(name.replace(AND, " "));
}
