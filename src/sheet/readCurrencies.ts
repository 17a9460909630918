import type { FieldValue } from "../domain/fieldValue";
import { currencyFromText } from "./currencyFromText";
import { readMoney } from "./readMoney";
import type { RowCurrencies } from "./rowCurrencies";
import { signedCurrencies } from "./signedCurrencies";
import type { Table } from "./table";
import { textAt } from "./textAt";

const VALUES = ["value", "totalValue"];

/**
 * The currencies of a table, by its Currency column; without one, by the signs of the amounts in `fields` (a pieces table's
 * values where left out) and of their headings.
 *
 * One sign, on however few amounts, is then the currency of all. Amounts are looked through for signs only when a
 * currency is asked for. A currency that is no known code, sign or name is kept as typed, in capitals.
 */
export function readCurrencies(table: Table, fields: readonly string[] = VALUES): RowCurrencies {
  const { columnOf, hintOf } = table;
  const currencyColumn = columnOf["currency"] ?? -1;
  const moneyColumns = fields.map((field) => columnOf[field]).filter((column) => column !== undefined);
  const ofHeading =
    fields.map((field) => hintOf?.[field]?.currency).find((currency) => typeof currency === "string") ?? null;
  const codeOf = new Map<string, string>();
  // Rows of one currency mostly stand together, so the last one is tried first.
  let lastNamed: string | null = null;
  let lastCode = "";

  let foundSigns: ReadonlySet<string> | null = null;
  const signs = (): ReadonlySet<string> => {
    foundSigns ??= new Set([...(ofHeading === null ? [] : [ofHeading]), ...signedCurrencies(table, moneyColumns)]);
    return foundSigns;
  };
  const signIn = (row: number): string | null => {
    for (const column of moneyColumns) {
      const raw = table.cells[row]![column];
      if (typeof raw !== "string") continue;
      const money = readMoney(raw, "");
      if (money.ok && money.value !== null && money.value.currency !== null) return money.value.currency;
    }
    return null;
  };
  const at = (row: number): FieldValue<string> => {
    if (currencyColumn < 0) {
      if (signs().size === 0) return null;
      return signs().size === 1 ? [...signs()][0]! : (signIn(row) ?? ofHeading);
    }
    const named = textAt(table, row, currencyColumn);
    if (typeof named !== "string") return named ?? signIn(row) ?? ofHeading;
    if (named === lastNamed) return lastCode;
    lastNamed = named;
    lastCode = codeOf.get(named) ?? currencyFromText(named) ?? named.toUpperCase();
    codeOf.set(named, lastCode);
    return lastCode;
  };
  return { hasCurrencies: () => currencyColumn >= 0 || signs().size > 1, at };
}
