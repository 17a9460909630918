import type { NeedingLook } from "../domain/day/neededPiece";
import type { CheckedRow } from "./checkedRow";
import type { CheckedWorkbook } from "./checkedWorkbook";

/** The pieces of one look. */
export interface LookPieces {
  /** The look as the first of them names it. */
  readonly name: string;
  /** In the order of the sheet; never empty. */
  readonly rows: readonly CheckedRow[];
}

/** The pieces of every look that a piece names, by the look's key. */
export function lookPieces(
  workbook: CheckedWorkbook,
  looksOf: (row: CheckedRow) => readonly NeedingLook[],
): ReadonlyMap<string, LookPieces> {
  const pieces = new Map<string, { readonly name: string; readonly rows: CheckedRow[] }>();
  for (const table of workbook.tables) {
    if (table.kind !== "pieces" || table.columnOf["look"] === undefined) continue;
    for (const index of table.dataRows) {
      const row = { table, row: index };
      for (const { name, key } of looksOf(row)) {
        const known = pieces.get(key);
        if (known === undefined) pieces.set(key, { name, rows: [row] });
        else known.rows.push(row);
      }
    }
  }
  return pieces;
}
