import { nameKey } from "../../sheet/nameKey";
import type { SheetTable } from "../../sheet/sheetTable";
import { cellText } from "../cellText";

/** Whom to ask for at each lender, by the key that spellings of a lender share; the first row that says it counts. */
export function contactsByLender(tables: readonly SheetTable[]): ReadonlyMap<string, string> {
  const contacts = new Map<string, string>();
  for (const table of tables.filter(({ kind }) => kind === "lenders")) {
    for (const row of table.dataRows) {
      const key = nameKey(cellText(table, row, "lender"));
      const contact = cellText(table, row, "contact");
      if (contact !== "" && !contacts.has(key)) contacts.set(key, contact);
    }
  }
  return contacts;
}
