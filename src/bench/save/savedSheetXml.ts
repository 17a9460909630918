import { BooleanNumber, type IWorksheetData } from "@univerjs/core";
import { cellName } from "../../sheet/cellName";
import type { BookSheet } from "../file/readBook";
import { changedCells } from "./changedCells";
import { columnPatch } from "./columnPatch";
import { columnStates } from "./columnStates";
import { freezePatch } from "./freezePatch";
import { formatPatch } from "./formatPatch";
import { listPatch } from "./listPatch";
import { filterPatch } from "./filterPatch";
import type { OpenedFilters } from "../file/OpenedFilters";
import type { SavingFormat } from "./SavingFormat";
import { shiftedReference } from "./shiftedReference";
import { mergePatch } from "./mergePatch";
import { openedState } from "./openedState";
import { patchCells } from "./patchCells";
import { rowPatch, type RowState } from "./rowPatch";
import type { SavingSheet } from "./savingBook";
import { parseSheetXml, printSheetXml, type SheetXml } from "./sheetXml";
import { shiftedIndex } from "./shiftedIndex";
import { shiftedState } from "./shiftedState";
import { shiftSheetXml } from "./shiftSheetXml";
import type { StructureEdit } from "./structureEdit";
import type { StylePatch } from "./stylePatch";

/** What a sheet was when it was opened: its part, and what the grid was given of it. */
export interface OpenedSheet {
  readonly book: BookSheet;
  readonly xml: string;
  readonly data: Partial<IWorksheetData>;
  readonly styles: Readonly<Record<string, unknown>>;
  readonly formats: readonly SavingFormat[];
  readonly filters: OpenedFilters;
}

/** A sheet's part with all that changed since it was opened; the very same text where nothing did. */
export function savedSheetXml(
  { book, xml, data, styles, formats, filters }: OpenedSheet,
  now: SavingSheet,
  structure: readonly StructureEdit[],
  stylePatch: StylePatch,
): string {
  const parsed = parseSheetXml(xml);
  if (parsed === null) return xml;
  const edits = structure.filter(({ sheetId }) => sheetId === book.sheetId);
  let sheet = edits.reduce((held, edit) => shiftSheetXml(held, edit, book.name), parsed);
  const opened = edits.reduce(shiftedState, openedState(data, styles));
  const kinds = formulaKinds(sheet);
  const formatAt = formatsOf(sheet);
  const wanted = changedCells({
    opened,
    now: now.state,
    // A formula shared among cells, or one that fills several, names cells that may have moved or changed.
    mustWrite: (row, column) => {
      const kind = kinds.get(cellName(row, column));
      return kind === "shared" || (kind === "array" && edits.length > 0);
    },
    isArray: (row, column) => kinds.get(cellName(row, column)) === "array",
    format: (row, column, before, after) => stylePatch.formatLike(formatAt(row, column), before, after),
  });
  const sharedAlone = wanted.every(({ row, column }) => kinds.get(cellName(row, column)) === "shared");
  const rows = changedRows(data, filters.rows, now, edits);
  const columns = columnStates({ columnData: data.columnData ?? {} });
  const columnsChanged = edits.every(({ axis }) => axis === "row") && text(columns) !== text(now.columns);
  const merges = (sheet.after.match(/<(?:\w+:)?mergeCell\s[^>]*>/g) ?? []).map(
    (tag) => /\sref="([^"]*)"/.exec(tag)?.[1] ?? "",
  );
  const mergesChanged = [...merges].sort().join() !== [...now.merges].sort().join();
  const filterChanged =
    JSON.stringify(filters.filter) !== JSON.stringify(now.filter) && (now.filter !== null || filters.filter !== null);
  const filtered = filterChanged ? filterPatch(sheet.after, now.filter, sheet.prefix) : sheet.after;
  const listed = listPatch(filtered, now.lists, sheet.prefix);
  const formatted = formatPatch(
    listed,
    shiftedFormats(formats, edits),
    now.formats,
    stylePatch.differential,
    sheet.prefix,
  );
  const endChanged = formatted !== sheet.after;
  const frozen = freezePatch(sheet.before, now.freeze, sheet.prefix);
  const freezeChanged = frozen !== sheet.before;
  if (
    edits.length === 0 &&
    sharedAlone &&
    rows.size === 0 &&
    !columnsChanged &&
    !mergesChanged &&
    !freezeChanged &&
    !endChanged
  ) {
    if (!wanted.some(({ row, column }) => differs(opened, now, row, column))) return xml;
  }
  sheet = { ...rowPatch(patchCells(sheet, wanted), rows), before: frozen, after: formatted };
  if (columnsChanged) sheet = { ...sheet, before: columnPatch(sheet.before, now.columns, sheet.prefix) };
  if (mergesChanged) sheet = { ...sheet, after: mergePatch(sheet.after, now.merges, sheet.prefix) };
  return printSheetXml(sheet);
}

function differs(opened: ReturnType<typeof openedState>, now: SavingSheet, row: number, column: number): boolean {
  const [before, after] = [opened.get(row)?.get(column), now.state.get(row)?.get(column)];
  return before?.formula !== after?.formula || JSON.stringify(before?.value) !== JSON.stringify(after?.value);
}

function text(columns: ReadonlyMap<number, unknown>): string {
  return JSON.stringify([...columns].sort(([a], [b]) => a - b));
}

function shiftedFormats(formats: readonly SavingFormat[], edits: readonly StructureEdit[]): SavingFormat[] {
  return formats.map((format) => {
    const places = format.reference.split(" ").flatMap((place) => {
      return (
        edits.reduce<string | null>((held, edit) => (held === null ? null : shiftedReference(held, edit)), place) ?? []
      );
    });
    return { ...format, reference: places.join(" ") };
  });
}

/** Which cells of the part hold a formula of more than one cell. */
function formulaKinds({ rows }: SheetXml): Map<string, "shared" | "array"> {
  const kinds = new Map<string, "shared" | "array">();
  for (const { row, cells } of rows) {
    for (const { column, xml } of cells) {
      const kind = /<(?:\w+:)?f\b[^>]*\st="(shared|array)"/.exec(xml)?.[1];
      if (kind === "shared" || kind === "array") kinds.set(cellName(row, column), kind);
    }
  }
  return kinds;
}

/** The number of a cell's format in the file; thousands of cells may ask, so the rows are found by their number. */
function formatsOf({ rows }: SheetXml): (row: number, column: number) => number {
  const byRow = new Map(rows.map((held) => [held.row, held.cells]));
  return (row, column) => {
    const cell = byRow.get(row)?.find((held) => held.column === column);
    return Number(/^<[^>]*\ss="(\d+)"/.exec(cell?.xml ?? "")?.[1] ?? 0);
  };
}

const POINTS_A_PIXEL = 72 / 96;

/** Rows that became higher or lower by hand, were hidden or shown. */
function changedRows(
  data: Partial<IWorksheetData>,
  filteredBefore: ReadonlySet<number>,
  now: SavingSheet,
  edits: readonly StructureEdit[],
): Map<number, RowState> {
  const before = new Map<number, { h?: number; hd?: BooleanNumber }>();
  for (const [row, held] of Object.entries(data.rowData ?? {})) {
    const moved = edits
      .filter(({ axis }) => axis === "row")
      .reduce<number | null>((at, edit) => (at === null ? null : shiftedIndex(at, edit)), Number(row));
    if (moved !== null && held) before.set(moved, held);
  }
  const wereFiltered = new Set(
    [...filteredBefore].map((row) =>
      edits
        .filter(({ axis }) => axis === "row")
        .reduce<number | null>((at, edit) => (at === null ? null : shiftedIndex(at, edit)), row),
    ),
  );
  const changed = new Map<number, RowState>();
  const touched = [...Object.keys(now.rowData).map(Number), ...now.filteredRows, ...wereFiltered];
  for (const row of new Set(touched)) {
    if (row === null) continue;
    const held = now.rowData[row];
    const old = before.get(row);
    const isHidden = held?.hd === BooleanNumber.TRUE || now.filteredRows.has(row);
    const wasHidden = old?.hd === BooleanNumber.TRUE || wereFiltered.has(row);
    // Heights that the grid fits to the text by itself are not the user's.
    const isSetByHand = held?.h !== undefined && held.h !== old?.h && held.ia !== BooleanNumber.TRUE;
    if (isHidden === wasHidden && !isSetByHand) continue;
    changed.set(row, { heightPoints: held?.h === undefined ? null : held.h * POINTS_A_PIXEL, hidden: isHidden });
  }
  return changed;
}
