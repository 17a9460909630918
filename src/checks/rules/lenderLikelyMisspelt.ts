import { defineRule } from "../defineRule";
import type { NameTally } from "../nameTally";
import { nearNames } from "../nearNames";
import { rewriteNames } from "../rewriteNames";
import { sayCount } from "../sayCount";

/** Used so often beside its neighbour, a name is no slip but another lender. */
const LEAST_OF_A_HABIT = 3;

/** Where a lenders table stands it decides what is spelt right, and the rule about unlisted lenders reports what is not. */
export const lenderLikelyMisspelt = defineRule({
  id: "lenderLikelyMisspelt",
  about:
    'Two names of lenders that are one slip of the keyboard, or "and" for "&", apart, where no lenders table decides.',
  why: "A lender under two names has its pieces and its value split, and a slip goes back with pieces missing.",
  severity: "warning",
  fixable: false,
  scope: "workbook",
  tables: ["pieces", "requests", "lenders"],
  reads: { pieces: ["lender"], requests: ["lender"], lenders: ["lender"] },
  messages: {
    misspelt:
      '"{{lender}}" ({{rows}}) looks like "{{commoner}}" ({{commonerRows}}). Use one spelling, if they are one lender.',
  },
  check(_workbook, report, facts) {
    if (facts.lenders() !== null) return;
    const tallies = mergedByKey(facts.lenderNames());
    const placeOf = new Map(tallies.map((tally, place) => [tally.name, place]));
    const findNear = nearNames(tallies.map(({ name }) => name));
    for (const [place, tally] of tallies.entries()) {
      const commoner = findNear(tally.name)
        .map((name) => placeOf.get(name)!)
        .filter((other) => isSlipOf(tally, tallies[other]!, other < place))
        .map((other) => tallies[other]!)
        .sort((a, b) => b.rows.length - a.rows.length)[0];
      if (commoner === undefined) continue;
      const repair = rewriteNames(tally, "lender", commoner.name);
      report({
        row: tally.rows[0]!,
        field: "lender",
        messageId: "misspelt",
        data: {
          lender: tally.name,
          rows: sayCount(tally.rows.length, "row"),
          commoner: commoner.name,
          commonerRows: sayCount(commoner.rows.length, "row"),
        },
        suggestions: repair === null ? [] : [repair],
      });
    }
  },
});

/** Of two equally common spellings the one that stands first is taken for right. */
function isSlipOf(tally: NameTally, other: NameTally, standsFirst: boolean): boolean {
  const [less, more] = [tally.rows.length, other.rows.length];
  if (less >= LEAST_OF_A_HABIT && less * 2 > more) return false;
  return more > less || (more === less && standsFirst);
}

/** Spellings that differ in case, accents, spacing or punctuation are one name here; the first stands for it. */
function mergedByKey(tallies: readonly NameTally[]): readonly NameTally[] {
  const merged = new Map<string, NameTally>();
  for (const tally of tallies) {
    const first = merged.get(tally.key);
    merged.set(tally.key, first === undefined ? tally : { ...first, rows: [...first.rows, ...tally.rows] });
  }
  return [...merged.values()];
}
