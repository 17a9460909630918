import { BooleanNumber, type IObjectArrayPrimitiveType, type IRowData, type IWorkbookData } from "@univerjs/core";
import { areaOfReference } from "../../sheet/areaOfReference";
import type { SavingFilterColumn } from "../save/SavingFilter";
import type { GridFilter } from "../save/sheetFilterOf";
import type { GridTableFilter } from "../save/tableFiltersOf";
import { emptyFilterValue } from "./emptyFilterValue";
import type { OpenedFilters } from "./OpenedFilters";
import { resourceOf } from "./resourceOf";

interface KeptTable {
  readonly id: string;
  readonly filters: { readonly tableColumnFilterList: readonly (GridTableFilter | null)[] };
}

/** A workbook for the grid with its filters, which then hide their rows themselves, so that clearing them shows the rows. */
export function withFilters(data: IWorkbookData, bySheet: ReadonlyMap<string, OpenedFilters>): IWorkbookData {
  if ([...bySheet.values()].every(({ filter, ofTables }) => filter === null && ofTables.size === 0)) return data;
  const own: Record<string, GridFilter> = {};
  const sheets = { ...data.sheets };
  for (const [sheetId, { filter, rows }] of bySheet) {
    const ref = filter === null ? null : areaOfReference(filter.reference.replace(/\$/g, ""));
    if (filter !== null && ref !== null) {
      const filterColumns = filter.columns.map(({ offset, values, isBlankShown }) => ({
        colId: ref.startColumn + offset,
        filters: { filters: [...(values ?? [])], ...(isBlankShown && { blank: true }) },
      }));
      const hidden = [...rows].filter((row) => row > ref.startRow && row <= ref.endRow);
      own[sheetId] = { ref, filterColumns, ...(hidden.length > 0 && { cachedFilteredOut: hidden }) };
    }
    const sheet = sheets[sheetId];
    if (sheet === undefined || rows.size === 0) continue;
    const rowData: IObjectArrayPrimitiveType<Partial<IRowData>> = { ...(sheet.rowData as typeof rowData) };
    for (const row of rows) rowData[row] = { ...rowData[row], hd: BooleanNumber.FALSE };
    sheets[sheetId] = { ...sheet, rowData };
  }
  const tables = Object.fromEntries(
    Object.entries(resourceOf<{ tables: KeptTable[] }>(data, "SHEET_TABLE_PLUGIN")).map(([sheetId, kept]) => [
      sheetId,
      {
        tables: (kept?.tables ?? []).map((table) => {
          const columns = bySheet.get(sheetId)?.ofTables.get(table.id);
          return columns === undefined ? table : { ...table, filters: { tableColumnFilterList: gridFilters(columns) } };
        }),
      },
    ]),
  );
  const replaced = new Map<string, unknown>([["SHEET_TABLE_PLUGIN", tables]]);
  const kept = (data.resources ?? []).map(({ name, data: text }) => {
    return { name, data: replaced.has(name) ? JSON.stringify(replaced.get(name)) : text };
  });
  return { ...data, sheets, resources: [...kept, { name: "SHEET_FILTER_PLUGIN", data: JSON.stringify(own) }] };
}

function gridFilters(columns: readonly SavingFilterColumn[]): (GridTableFilter | null)[] {
  const list: (GridTableFilter | null)[] = [];
  for (const { offset, values, isBlankShown } of columns) {
    while (list.length <= offset) list.push(null);
    list[offset] = { filterType: "manual", values: [...(values ?? []), ...(isBlankShown ? [emptyFilterValue] : [])] };
  }
  return list;
}
