import type { FieldValue } from "./fieldValue";
import { isProblem } from "./isProblem";

interface GroupFinder<T> {
  (name: FieldValue<string>, currency: FieldValue<string>): T;
  /** Every group found so far, in the order first seen. */
  readonly all: readonly T[];
}

/**
 * Finds the group that a name and a currency belong to, and makes it where it is the first of them.
 *
 * Spellings with one key are one name; no name and no currency are groups of their own, and so is what cannot be read. The
 * spelling as typed is tried first, so that its key is worked out once.
 */
export function groupFinder<T>(
  nameKey: (name: string) => string,
  make: (name: FieldValue<string>, currency: FieldValue<string>) => T,
): GroupFinder<T> {
  interface OneCurrency {
    readonly bySpelling: Map<string | null, T>;
    readonly byKey: Map<string | null, T>;
  }
  const all: T[] = [];
  const byCurrency = new Map<string | null, OneCurrency>();
  // Rows of one currency mostly stand together, so the last one is tried first.
  let lastCurrency: string | null | undefined = undefined;
  let known: OneCurrency = { bySpelling: new Map(), byKey: new Map() };
  const find = (name: FieldValue<string>, currency: FieldValue<string>): T => {
    // What cannot be read is one group of its own; no name and no currency is an empty text.
    const spelling = isProblem(name) ? null : (name ?? "");
    const currencyKey = isProblem(currency) ? null : (currency ?? "");
    if (currencyKey !== lastCurrency) {
      lastCurrency = currencyKey;
      known = byCurrency.get(currencyKey) ?? { bySpelling: new Map(), byKey: new Map() };
      byCurrency.set(currencyKey, known);
    }
    let group = known.bySpelling.get(spelling);
    if (group !== undefined) return group;
    // A name of punctuation alone has no key; it is then its own key, and not "no name".
    const key = spelling === null || spelling === "" ? spelling : nameKey(spelling) || spelling;
    group = known.byKey.get(key);
    if (group === undefined) {
      group = make(name, currency);
      all.push(group);
      known.byKey.set(key, group);
    }
    known.bySpelling.set(spelling, group);
    return group;
  };
  return Object.assign(find, { all });
}
