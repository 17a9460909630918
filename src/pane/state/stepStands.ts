import type { WriteReceipt } from "../../sheet/cellEdit";
import { holdsExpected } from "../../sheet/holdsExpected";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";

/** Whether any of the cells that a step wrote still holds what it wrote; false for a step that wrote no cells. */
export function stepStands({ prior }: WriteReceipt, { sheets }: WorkbookSnapshot): boolean {
  const sheetOf = new Map(sheets.map((sheet) => [sheet.sheetId, sheet]));
  return prior.some((edit) => {
    const sheet = sheetOf.get(edit.at.sheetId);
    if (sheet === undefined) return false;
    const row = edit.at.row - sheet.firstRow;
    const column = edit.at.column - sheet.firstColumn;
    return holdsExpected(edit, {
      value: sheet.values[row]?.[column] ?? null,
      formula: sheet.formulas[row]?.[column] ?? null,
    });
  });
}
