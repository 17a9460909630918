import type { CheckedWorkbook } from "./checkedWorkbook";
import type { ListedLook, LookBook } from "./lookBook";
import { lookKey } from "./lookKey";
import { textIn } from "./textIn";

/** The looks that the workbook's looks tables list; null where they list none. */
export function lookBookOf(workbook: CheckedWorkbook): LookBook | null {
  const book = new Map<string, ListedLook>();
  for (const table of workbook.tables) {
    if (table.kind !== "looks") continue;
    for (const row of table.dataRows) {
      const name = textIn({ table, row }, "look");
      const key = name === null ? "" : lookKey(name);
      if (name !== null && key !== "" && !book.has(key)) book.set(key, { name, row: { table, row } });
    }
  }
  return book.size === 0 ? null : book;
}
