import { isOwnKit } from "../sheet/isOwnKit";
import { isUndecided } from "../sheet/isUndecided";
import { nameKey } from "../sheet/nameKey";
import type { CheckedRow } from "./checkedRow";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { NameTally } from "./nameTally";
import { textIn } from "./textIn";

/** Every spelling of a lender in pieces and requests, in the order in which they first appear; "tbc" and one's own kit are none. */
export function lenderTally(workbook: CheckedWorkbook): readonly NameTally[] {
  const rowsOf = new Map<string, CheckedRow[]>();
  for (const table of workbook.tables) {
    if ((table.kind !== "pieces" && table.kind !== "requests") || table.columnOf["lender"] === undefined) continue;
    for (const row of table.dataRows) {
      const name = textIn({ table, row }, "lender");
      if (name === null) continue;
      const rows = rowsOf.get(name);
      if (rows === undefined) rowsOf.set(name, [{ table, row }]);
      else rows.push({ table, row });
    }
  }
  return [...rowsOf]
    .map(([name, rows]) => ({ name, key: nameKey(name), rows }))
    .filter(({ name, key }) => key !== "" && !isUndecided(name) && !isOwnKit(name));
}
