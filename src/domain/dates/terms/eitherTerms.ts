import { termForms } from "./termForms";
import { termTokens } from "./termTokens";

// English, and "to" and "or" in the other languages of the trade.
const JOINTS = / *(?:[-/~]|\b(?:to|or|and|a|o|ou|e|oder|bis|und)\b) */g;

/** The two phrases that "3 to 5 days", "Fri/Mon" or "7 days or 5 working days" names, where each is terms by itself; else null. */
export function eitherTerms(text: string): readonly [first: string, second: string] | null {
  for (const { 0: joint, index } of text.matchAll(JOINTS)) {
    const before = text.slice(0, index);
    const after = text.slice(index + joint.length);
    const shared = [before + after.replace(/^(?:\d+|[a-z]+)/, ""), before.replace(/(?:\d+|[a-z]+)$/, "") + after];
    for (const readings of [shared, [before, after]] as [string, string][])
      if (readings.every(isTerms)) return readings;
  }
  return null;
}

function isTerms(text: string): boolean {
  const { symbols } = termTokens(text);
  return Object.values(termForms).some((form) => form.test(symbols));
}
