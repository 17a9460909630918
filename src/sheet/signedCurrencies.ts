import { readMoney } from "./readMoney";
import type { Table } from "./table";

/** The different currencies that the amounts of some columns carry themselves ("£95", "95 EUR"), in the order first seen. */
export function signedCurrencies(table: Table, columns: readonly number[]): readonly string[] {
  const found = new Set<string>();
  for (const row of table.dataRows) {
    for (const column of columns) {
      const raw = table.cells[row]![column];
      // A number carries no sign; only text is read.
      if (typeof raw !== "string" || raw === "") continue;
      const money = readMoney(raw, "");
      if (money.ok && money.value !== null && money.value.currency !== null) found.add(money.value.currency);
    }
  }
  return [...found];
}
