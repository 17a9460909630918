import { lookKey } from "../sheet/lookKey";
import type { CheckedRow } from "./checkedRow";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { LookBook } from "./lookBook";
import { textIn } from "./textIn";

/** The looks that the workbook's looks tables list; null where they list none. */
export function lookBookOf(workbook: CheckedWorkbook): LookBook | null {
  const book = new Map<string, { readonly name: string; readonly rows: CheckedRow[] }>();
  for (const table of workbook.tables) {
    if (table.kind !== "looks") continue;
    for (const row of table.dataRows) {
      const name = textIn({ table, row }, "look");
      const key = name === null ? "" : lookKey(name);
      if (name === null || key === "") continue;
      const listed = book.get(key);
      if (listed === undefined) book.set(key, { name, rows: [{ table, row }] });
      else listed.rows.push({ table, row });
    }
  }
  return book.size === 0 ? null : book;
}
