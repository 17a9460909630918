import { fail } from "../../domain/fail";
import type { Outcome } from "../../domain/outcome";
import type { NewColumns } from "../../sheet/buildPlan";
import { listCells } from "../../sheet/listCells";
import type { OpenGrid } from "./openGrid";

/** Why columns must not be added where blocks are merged, or null. */
export function refuseMerged({ model }: OpenGrid, added: readonly NewColumns[]): Outcome<never> | null {
  for (const { sheetId, row, column, rowCount, headings } of added) {
    const sheet = model.getSheetBySheetId(sheetId);
    const merged = (sheet?.getMergeData() ?? []).filter(
      ({ startRow, startColumn, endRow, endColumn }) =>
        startRow < row + rowCount && row <= endRow && startColumn < column + headings.length && column <= endColumn,
    );
    if (sheet && merged.length > 0) {
      const cells = merged.map(({ startRow, startColumn }) => ({ row: startRow, column: startColumn }));
      return fail("cells-merged", { sheet: sheet.getName(), cells: listCells(cells) });
    }
  }
  return null;
}
