import type { SheetTable } from "../sheet/sheetTable";
import type { CheckedWorkbook } from "./checkedWorkbook";
import type { WorkbookNotes } from "../sheet/workbookNotes";
import type { CheckedPart } from "./checkedPart";
import { sameContent } from "./sameContent";
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
  /**
   * The kinds of which a table differs, came or went, each with the fields whose cells differ; null for every field,
   * where a row or a table came, went or moved.
   */
  readonly fields: ReadonlyMap<CheckedPart, ReadonlySet<string> | null>;
}

/** A workbook as read, with what was found beside its tables. */
interface Reading {
  readonly workbook: CheckedWorkbook;
  readonly notes: WorkbookNotes;
}

/** Compares two readings of a workbook, row by row where a table stayed where it was. */
export function workbookChange(earlier: Reading, later: Reading): WorkbookChange {
  const before = earlier.workbook;
  const after = later.workbook;
  const fields = new Map<CheckedPart, Set<string> | null>();
  const matched = new Set<number>();
  const tables = after.tables.map((table): TableChange => {
    const index = before.tables.findIndex((candidate) => sameFrame(candidate, table));
    const known = before.tables[index];
    if (known === undefined) {
      fields.set(table.kind, null);
      return { before: null, changedRows: table.dataRows, removedRows: [] };
    }
    matched.add(index);
    const { changedRows, removedRows, isSameRows } = rowChanges(known, table);
    if (!isSameRows) fields.set(table.kind, null);
    else if (changedRows.length > 0 && fields.get(table.kind) !== null) {
      fields.set(table.kind, changedFields(known, table, changedRows, fields.get(table.kind) ?? new Set()));
    }
    return { before: index, changedRows, removedRows };
  });
  before.tables.forEach((table, index) => {
    if (!matched.has(index)) fields.set(table.kind, null);
  });
  const noted = changedNotes(earlier.notes, later.notes);
  if (noted.size > 0) fields.set("notes", noted);
  return { tables, fields };
}

function rowChanges(
  before: SheetTable,
  after: SheetTable,
): Pick<TableChange, "changedRows" | "removedRows"> & { readonly isSameRows: boolean } {
  if (before === after) return { changedRows: [], removedRows: [], isSameRows: true };
  const changedRows: number[] = [];
  const earlierRows = new Set(before.dataRows);
  let isSameRows = true;
  for (const row of after.dataRows) {
    const isKnown = earlierRows.delete(row);
    if (!isKnown) isSameRows = false;
    if (!isKnown || !sameRow(before, after, row)) changedRows.push(row);
  }
  const removedRows = [...earlierRows];
  return { changedRows, removedRows, isSameRows: isSameRows && removedRows.length === 0 };
}

/** Adds to `into` the fields of which a changed row's cell, or the formula behind it, differs. */
function changedFields(before: SheetTable, after: SheetTable, rows: readonly number[], into: Set<string>): Set<string> {
  for (const [field, column] of Object.entries(after.columnOf)) {
    if (column === undefined || into.has(field)) continue;
    const differs = (row: number): boolean =>
      !sameContent(before.cells[row]?.[column], after.cells[row]?.[column]) ||
      before.formulas[row]?.[column] !== after.formulas[row]?.[column];
    if (rows.some(differs)) into.add(field);
  }
  return into;
}

/** The notes are few and small, and hold nothing but plain values. */
function changedNotes(before: WorkbookNotes, after: WorkbookNotes): Set<string> {
  const fields = Object.keys(after) as (keyof WorkbookNotes)[];
  return new Set(fields.filter((field) => JSON.stringify(before[field]) !== JSON.stringify(after[field])));
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
