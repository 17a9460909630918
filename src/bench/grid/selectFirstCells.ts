import { RANGE_TYPE } from "@univerjs/core";
import { SheetsSelectionsService } from "@univerjs/sheets";
import type { OpenGrid } from "../port/openGrid";

/**
 * Selects the first cell of every sheet. On a sheet that nobody looked at yet nothing is selected, which the grid
 * takes for a want of permission when a formula being typed points there.
 */
export function selectFirstCells({ grid, unitId, model }: OpenGrid): void {
  const selections = grid.univer.__getInjector().get(SheetsSelectionsService);
  for (const sheet of model.getSheets()) {
    const range = { startRow: 0, startColumn: 0, endRow: 0, endColumn: 0, rangeType: RANGE_TYPE.NORMAL };
    const primary = { ...range, actualRow: 0, actualColumn: 0, isMerged: false, isMergedMainCell: false };
    selections.setSelections(unitId, sheet.getSheetId(), [{ range, primary, style: null }]);
  }
}
