import { BooleanNumber, CellValueType, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import { strFromU8 } from "fflate";
import { areaOfReference, type Area } from "../../sheet/areaOfReference";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import { elementsOf } from "../save/elementsOf";
import type { SavingFilter, SavingFilterColumn } from "../save/SavingFilter";
import type { OpenedFilters } from "./OpenedFilters";
import { parseFilter } from "./parseFilter";
import type { Book } from "./readBook";
import { relationshipsOf } from "./relationshipsOf";
import type { WorkbookParts } from "./unpackWorkbook";

/** The filters of each sheet that the grid can take over: those that hide in the grid the very rows that the file hides. */
export function readFilters(parts: WorkbookParts, book: Book, data: IWorkbookData): Map<string, OpenedFilters> {
  const bySheet = new Map<string, OpenedFilters>();
  for (const { sheetId, path } of book.sheets) {
    const sheet = data.sheets[sheetId];
    if (path === null || sheet === undefined) continue;
    const rows = new Set<number>();
    const ofTables = new Map<string, readonly SavingFilterColumn[]>();
    const own = filterIn(
      strFromU8(parts[path] ?? new Uint8Array()).replace(
        /<(?:\w+:)?customSheetViews\b[\s\S]*?<\/(?:\w+:)?customSheetViews>/,
        "",
      ),
    );
    const ownRows = own === null ? null : rowsHiddenBy(own, sheet);
    for (const row of ownRows ?? []) rows.add(row);
    for (const target of relationshipsOf(parts, path).values()) {
      if (!/(?:^|\/)tables\/[^/]+\.xml$/.test(target)) continue;
      const xml = strFromU8(parts[target] ?? new Uint8Array());
      const table = /<(?:\w+:)?table\b[^>]*>/.exec(xml)?.[0] ?? "";
      const held = filterIn(xml);
      // A table's filter covers its rows, also where whoever wrote the file named the headings alone.
      const filter = held === null ? null : { ...held, reference: xmlAttribute(table, "ref") ?? "" };
      const hidden = filter === null || filter.columns.length === 0 ? null : rowsHiddenBy(filter, sheet);
      if (filter === null || hidden === null) continue;
      ofTables.set(xmlAttribute(table, "displayName") ?? "", filter.columns);
      for (const row of hidden) rows.add(row);
    }
    bySheet.set(sheetId, { filter: ownRows === null ? null : own, ofTables, rows });
  }
  return bySheet;
}

function filterIn(xml: string): SavingFilter | null {
  const element = elementsOf(xml, "autoFilter")[0];
  return element === undefined ? null : parseFilter(element);
}

/** The rows that a filter hides here; null where the file hides others, or a cell is shown in a way that is not told here. */
function rowsHiddenBy(
  { reference, columns }: SavingFilter,
  { cellData, rowData }: Partial<IWorksheetData>,
): number[] | null {
  const area: Area | null = areaOfReference(reference.replace(/\$/g, ""));
  if (area === null) return null;
  const hidden: number[] = [];
  for (let row = area.startRow + 1; row <= area.endRow; row++) {
    const shows = columns.map(({ offset, values, isBlankShown }) => {
      const cell = cellData?.[row]?.[area.startColumn + offset];
      if (cell?.v === undefined || cell.v === null || cell.v === "") return isBlankShown;
      // A number is shown in its format, which the file's values repeat.
      return typeof cell.v === "string" && cell.t === CellValueType.STRING ? values?.includes(cell.v) === true : null;
    });
    if (shows.includes(null)) return null;
    const isHidden = shows.includes(false);
    if (isHidden !== (rowData?.[row]?.hd === BooleanNumber.TRUE)) return null;
    if (isHidden) hidden.push(row);
  }
  return hidden;
}
