import type { SheetTable } from "../sheet/sheetTable";
import type { TableKind } from "../sheet/tableKind";
import type { CheckedWorkbook } from "./checkedWorkbook";
import { sameRow } from "./sameRow";

/** How one table stands to its earlier reading. */
interface TableChange {
  /** Where it stood among the tables before; null when it is new, or its place or headings are not what they were. */
  readonly before: number | null;
  /** Data rows that are new or hold something else. */
  readonly changedRows: readonly number[];
  /** Rows that were data rows and are none now. */
  readonly removedRows: readonly number[];
}

/** What differs between two readings of a workbook. */
export interface WorkbookChange {
  /** One entry for each table of the later reading. */
  readonly tables: readonly TableChange[];
  /** Kinds of which a table differs, came or went. */
  readonly kinds: ReadonlySet<TableKind>;
}

/** Compares two readings of a workbook, row by row where a table stayed where it was. */
export function workbookChange(before: CheckedWorkbook, after: CheckedWorkbook): WorkbookChange {
  const kinds = new Set<TableKind>();
  const matched = new Set<number>();
  const tables = after.tables.map((table): TableChange => {
    const index = before.tables.findIndex((earlier) => sameFrame(earlier, table));
    const earlier = before.tables[index];
    if (earlier === undefined) {
      kinds.add(table.kind);
      return { before: null, changedRows: table.dataRows, removedRows: [] };
    }
    matched.add(index);
    const change = rowChanges(earlier, table);
    if (change.changedRows.length > 0 || change.removedRows.length > 0) kinds.add(table.kind);
    return { before: index, ...change };
  });
  before.tables.forEach((table, index) => {
    if (!matched.has(index)) kinds.add(table.kind);
  });
  return { tables, kinds };
}

function rowChanges(before: SheetTable, after: SheetTable): Pick<TableChange, "changedRows" | "removedRows"> {
  if (before === after) return { changedRows: [], removedRows: [] };
  const changedRows: number[] = [];
  const earlierRows = new Set(before.dataRows);
  for (const row of after.dataRows) {
    if (!earlierRows.delete(row) || !sameRow(before, after, row)) changedRows.push(row);
  }
  return { changedRows, removedRows: [...earlierRows] };
}

function sameFrame(before: SheetTable, after: SheetTable): boolean {
  if (before === after) return true;
  return (
    before.sheetId === after.sheetId &&
    before.kind === after.kind &&
    before.firstRow === after.firstRow &&
    before.firstColumn === after.firstColumn &&
    before.headingRow === after.headingRow &&
    before.sheetName === after.sheetName &&
    before.headings.length === after.headings.length &&
    before.headings.every((heading, column) => heading === after.headings[column]) &&
    sameColumns(before.columnOf, after.columnOf)
  );
}

function sameColumns(before: SheetTable["columnOf"], after: SheetTable["columnOf"]): boolean {
  const fields = Object.keys(before);
  return fields.length === Object.keys(after).length && fields.every((field) => before[field] === after[field]);
}
