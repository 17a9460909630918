import { nameKey } from "../sheet/nameKey";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { LenderBook, ListedLender } from "./lenderBook";
import { textIn } from "./textIn";

/** The lenders that the workbook's lenders tables list; null where they list none. */
export function lenderBookOf(workbook: Pick<CheckedWorkbook, "tables">): LenderBook | null {
  const book = new Map<string, ListedLender>();
  for (const table of workbook.tables) {
    if (table.kind !== "lenders") continue;
    for (const row of table.dataRows) {
      const name = textIn({ table, row }, "lender");
      const key = name === null ? "" : nameKey(name);
      if (name !== null && key !== "" && !book.has(key)) book.set(key, { name, row: { table, row } });
    }
  }
  return book.size === 0 ? null : book;
}
