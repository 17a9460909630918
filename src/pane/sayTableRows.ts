import type { SheetTable } from "../sheet/sheetTable";
import type { TableKind } from "../sheet/tableKind";
import { sayCount } from "./sayCount";
import { sayList } from "./sayList";

/** One row of each kind of table, and several. */
const ROW_WORDS: Readonly<Record<TableKind, readonly [one: string, many: string]>> = {
  pieces: ["piece", "pieces"],
  requests: ["request", "requests"],
  lenders: ["lender", "lenders"],
  looks: ["look", "looks"],
  day: ["shoot day", "shoot days"],
  stops: ["stop", "stops"],
  receipts: ["receipt", "receipts"],
  shoes: ["row of shoes", "rows of shoes"],
};

/** How much was read, in the words of the trade: "120 pieces, 14 lenders and 18 looks". "" when nothing was. */
export function sayTableRows(tables: readonly Pick<SheetTable, "kind" | "dataRows">[]): string {
  const rowsOf = new Map<TableKind, number>();
  for (const table of tables) rowsOf.set(table.kind, (rowsOf.get(table.kind) ?? 0) + table.dataRows.length);
  return sayList([...rowsOf].map(([kind, count]) => sayCount(count, ...ROW_WORDS[kind])));
}
