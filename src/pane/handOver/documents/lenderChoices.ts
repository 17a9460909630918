import type { ReadTables } from "../../state/ReadTables";
import { nameKey } from "../../../sheet/nameKey";
import { cellText } from "../../cellText";

/** The lenders that one can be written to, by key, in the order of their names; every table that names lenders counts. */
export function lenderChoices(read: ReadTables): readonly { readonly key: string; readonly name: string }[] {
  const names = new Map<string, string>();
  for (const table of read.tables) {
    if (table.columnOf["lender"] === undefined) continue;
    for (const row of table.dataRows) {
      const name = cellText(table, row, "lender");
      const key = nameKey(name) || name;
      if (name !== "" && !names.has(key)) names.set(key, name);
    }
  }
  return [...names].map(([key, name]) => ({ key, name })).sort((a, b) => a.name.localeCompare(b.name, "en-GB"));
}
