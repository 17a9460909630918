import {
  BooleanNumber,
  IResourceManagerService,
  UniverInstanceType,
  type IWorksheetData,
  type Worksheet,
} from "@univerjs/core";
import type {} from "@univerjs/preset-sheets-data-validation";
import type { OpenGrid } from "../port/openGrid";
import { columnStates } from "./columnStates";
import type { SavingBook, SavingList, SavingSheet, SavingTable } from "./savingBook";
import { formatsOf, type GridFormat } from "./formatsOf";
import { referenceOf } from "./referenceOf";
import { sheetFilterOf, type GridFilter } from "./sheetFilterOf";
import { tableFiltersOf, type GridTableFilter } from "./tableFiltersOf";
import { resourceOf } from "../file/resourceOf";
import { sheetState, type SheetState } from "./sheetState";
import type { StructureEdit } from "./structureEdit";

interface GridTables {
  readonly tables: readonly {
    readonly id: string;
    readonly filters?: { readonly tableColumnFilterList?: readonly (GridTableFilter | null)[] };
  }[];
}

/** The grid as it stands, ready to be saved. */
export function savingBookOf(
  open: OpenGrid,
  structure: readonly StructureEdit[],
  kept: ReadonlyMap<string, string>,
): SavingBook {
  const sheets = open.model.getSheets();
  const resources = open.grid.univer
    .__getInjector()
    .get(IResourceManagerService)
    .getResourcesByType(open.unitId, UniverInstanceType.UNIVER_SHEET);
  const active = open.facade.getActiveSheet().getSheetId();
  return {
    sheets: sheets.map((sheet) => savingSheet(open, sheet, { resources })),
    activeSheet: Math.max(
      0,
      sheets.findIndex((sheet) => sheet.getSheetId() === active),
    ),
    structure,
    kept,
  };
}

function savingSheet(open: OpenGrid, sheet: Worksheet, kept: Parameters<typeof resourceOf>[0]): SavingSheet {
  const sheetId = sheet.getSheetId();
  const filter = resourceOf<GridFilter>(kept, "SHEET_FILTER_PLUGIN")[sheetId];
  const state = sheetState(open, sheet);
  const config: IWorksheetData = sheet.getConfig();
  return {
    sheetId,
    name: sheet.getName(),
    hidden: sheet.isSheetHidden() === BooleanNumber.TRUE,
    state,
    rowData: config.rowData,
    columns: columnStates(config),
    freeze: { rows: config.freeze.ySplit, columns: config.freeze.xSplit },
    merges: sheet.getMergeData().map(referenceOf),
    tables: tablesOf(open, sheetId, state, resourceOf<GridTables>(kept, "SHEET_TABLE_PLUGIN")[sheetId]),
    lists: listsOf(open, sheetId),
    formats: formatsOf(resourceOf<GridFormat[]>(kept, "SHEET_CONDITIONAL_FORMATTING_PLUGIN")[sheetId] ?? []),
    filter: filter === undefined ? null : sheetFilterOf(filter),
    filteredRows: new Set(
      Array.from({ length: sheet.getRowCount() }, (_, row) => row).filter((row) => sheet.isRowFiltered(row)),
    ),
  };
}

function tablesOf(
  { facade }: OpenGrid,
  sheetId: string,
  state: SheetState,
  kept: GridTables | undefined,
): SavingTable[] {
  return facade
    .getTableList()
    .filter(({ subUnitId }) => subUnitId === sheetId)
    .map(({ id, name, range }) => ({
      name,
      filters: tableFiltersOf(kept?.tables.find((table) => table.id === id)?.filters?.tableColumnFilterList ?? []),
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
    return [{ reference, source: typedList(rule.formula1) ?? rule.formula1, isStrict: rule.showErrorMessage === true }];
  });
}

/** A list that was typed into the grid is kept as ["yes","no"], one that a file brought as yes,no. */
function typedList(source: string): string | null {
  if (!source.startsWith("[")) return null;
  try {
    const parts: unknown = JSON.parse(source);
    return Array.isArray(parts) ? parts.map(String).join(",") : null;
  } catch {
    return null;
  }
}
