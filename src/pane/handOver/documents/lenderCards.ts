import { nameKey } from "../../../sheet/nameKey";
import type { SheetTable } from "../../../sheet/sheetTable";
import { cellText } from "../../cellText";
import type { LenderCard } from "./LenderCard";

/** The lenders that the workbook lists, by the key that spellings of one share; the first row of a lender counts. */
export function lenderCards(tables: readonly SheetTable[]): ReadonlyMap<string, LenderCard> {
  const cards = new Map<string, LenderCard>();
  for (const table of tables.filter(({ kind }) => kind === "lenders")) {
    for (const row of table.dataRows) {
      const name = cellText(table, row, "lender");
      const key = nameKey(name) || name;
      if (name === "" || cards.has(key)) continue;
      const says = (field: string): string => cellText(table, row, field);
      cards.set(key, {
        name,
        contact: says("contact"),
        address: says("address"),
        terms: says("terms"),
        cleaning: says("cleaning"),
      });
    }
  }
  return cards;
}
