import { BooleanNumber, type IRange, type IWorksheetData, type Worksheet } from "@univerjs/core";
import { cellName } from "../../sheet/cellName";
import type {} from "@univerjs/preset-sheets-data-validation";
import type { OpenGrid } from "../port/openGrid";
import { columnStates } from "./columnStates";
import type { SavingBook, SavingList, SavingSheet, SavingTable } from "./savingBook";
import { sheetState, type SheetState } from "./sheetState";
import type { StructureEdit } from "./structureEdit";

/** The grid as it stands, ready to be saved. */
export function savingBookOf(
  open: OpenGrid,
  structure: readonly StructureEdit[],
  kept: ReadonlyMap<string, string>,
): SavingBook {
  const sheets = open.model.getSheets();
  const active = open.facade.getActiveSheet().getSheetId();
  return {
    sheets: sheets.map((sheet) => savingSheet(open, sheet)),
    activeSheet: Math.max(
      0,
      sheets.findIndex((sheet) => sheet.getSheetId() === active),
    ),
    structure,
    kept,
  };
}

function savingSheet(open: OpenGrid, sheet: Worksheet): SavingSheet {
  const state = sheetState(open, sheet);
  const config: IWorksheetData = sheet.getConfig();
  return {
    sheetId: sheet.getSheetId(),
    name: sheet.getName(),
    hidden: sheet.isSheetHidden() === BooleanNumber.TRUE,
    state,
    rowData: config.rowData,
    columns: columnStates(config),
    merges: sheet.getMergeData().map(referenceOf),
    tables: tablesOf(open, sheet.getSheetId(), state),
    lists: listsOf(open, sheet.getSheetId()),
  };
}

function tablesOf({ facade }: OpenGrid, sheetId: string, state: SheetState): SavingTable[] {
  return facade
    .getTableList()
    .filter(({ subUnitId }) => subUnitId === sheetId)
    .map(({ name, range }) => ({
      name,
      reference: referenceOf(range),
      headings: Array.from({ length: range.endColumn - range.startColumn + 1 }, (_, index) => {
        const value = state.get(range.startRow)?.get(range.startColumn + index)?.value ?? null;
        return value === null || typeof value === "object" ? `Column${index + 1}` : String(value);
      }),
    }));
}

function listsOf({ facade }: OpenGrid, sheetId: string): SavingList[] {
  const rules = facade.getSheetBySheetId(sheetId)?.getDataValidations() ?? [];
  return rules.flatMap(({ rule }) => {
    if (rule.type !== "list" || !rule.formula1) return [];
    const reference = rule.ranges.map(referenceOf).join(" ");
    return [{ reference, source: rule.formula1, isStrict: rule.showErrorMessage === true }];
  });
}

function referenceOf({ startRow, startColumn, endRow, endColumn }: IRange): string {
  return `${cellName(startRow, startColumn)}:${cellName(endRow, endColumn)}`;
}
