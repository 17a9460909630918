import type { ColumnChoices } from "./columnChoices";
import { assignColumns } from "./assignColumns";
import { readHeading } from "./readHeading";
import type { TableKind } from "./tableKind";

/** The kinds a heading row could be, best first; kinds after the first are there only when they fit as well. */
export interface KindGuess {
  readonly kinds: readonly TableKind[];
  /** How many headings have a meaning in the best kind, also where that is too few. */
  readonly fieldCount: number;
}

/** What a heading row must name to be of a kind: one field of each list, and so many fields in all. */
const SIGNATURES: Readonly<
  Record<TableKind, { readonly each: readonly (readonly string[])[]; readonly atLeast: number }>
> = {
  pieces: {
    each: [
      ["piece", "description", "kind", "lender", "slip"],
      ["out", "due", "back", "value", "totalValue", "terms", "slip", "quantity", "weight", "conditionOut"],
    ],
    atLeast: 3,
  },
  lenders: {
    each: [
      ["lender"],
      [
        "contact",
        "address",
        "open",
        "close",
        "closedWeekdays",
        "terms",
        "lateFee",
        "courierDays",
        "latitude",
        "cleaning",
      ],
    ],
    atLeast: 2,
  },
  looks: {
    each: [["look"], ["order", "talent", "set", "change", "hairMakeup", "shooting", "arrives", "shotAt", "pieces"]],
    atLeast: 3,
  },
  requests: { each: [["lender"], ["asked", "wanted", "neededBy", "answer", "answered"]], atLeast: 3 },
  receipts: {
    each: [
      ["shop", "amount"],
      ["bought", "kept", "refunded", "amountRefunded"],
    ],
    atLeast: 3,
  },
  stops: { each: [["stop"], ["open", "close", "minutes", "latitude", "receivesUntil"]], atLeast: 3 },
  shoes: { each: [["shoes"], ["size", "where", "pairs"]], atLeast: 2 },
  day: { each: [["call"], ["wrap", "date", "dressers", "chairs", "meal"]], atLeast: 2 },
};
const KINDS = Object.keys(SIGNATURES) as TableKind[];

/**
 * The kind of table a heading row begins: the one whose vocabulary gives a meaning to most of its headings, among those whose
 * signature it has. Two kinds stand in the answer only when they tie, and then none is chosen.
 */
export function guessTableKind(headings: readonly string[], choices: ColumnChoices[string] = []): KindGuess {
  let kinds: TableKind[] = [];
  let best = 0;
  let fieldCount = 0;
  for (const kind of KINDS) {
    const chosen = choices.filter((choice) => choice.kind === kind);
    const { columnOf, contested } = assignColumns(headings, kind, chosen);
    const fields = new Set([...Object.keys(columnOf), ...contested.keys()]);
    fieldCount = Math.max(fieldCount, fields.size);
    const { each, atLeast } = SIGNATURES[kind];
    if (fields.size < atLeast || !each.every((group) => group.some((field) => fields.has(field)))) continue;
    const score = fields.size + plainShare(headings, kind);
    if (score > best) {
      best = score;
      kinds = [kind];
    } else if (score === best) kinds.push(kind);
  }
  return { kinds, fieldCount };
}

/** The share of headings that are this kind's own words and give way to none: parts kinds that name as many fields. */
function plainShare(headings: readonly string[], kind: TableKind): number {
  const isPlain = (heading: string): boolean =>
    readHeading(kind, heading)?.readings.some((reading) => !reading.givesWay) ?? false;
  return headings.filter(isPlain).length / (headings.length + 1);
}
