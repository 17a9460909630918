import { readFileSync } from "node:fs";
import { join } from "node:path";
import { openedTables } from "../../../src/bench/file/openedTables";
import { openWorkbookFile, type OpenedFile } from "../../../src/bench/file/openWorkbookFile";
import { cellName } from "../../../src/sheet/cellName";
import type { TableArea } from "../../../src/sheet/sheetSnapshot";
import { areaOfReference, type Area } from "../../../src/sheet/areaOfReference";
import { columnStates } from "../../../src/bench/save/columnStates";
import { openedState } from "../../../src/bench/save/openedState";
import { resourceOf } from "../../../src/bench/file/resourceOf";
import { formatsOf, type GridFormat } from "../../../src/bench/save/formatsOf";
import { referenceOf } from "../../../src/bench/save/referenceOf";
import type { SavingBook, SavingList, SavingSheet } from "../../../src/bench/save/savingBook";
import type { CellState } from "../../../src/bench/save/sheetState";

const samplePath = join(__dirname, "../../../sample-workbooks/two-day-shoot.xlsx");

export async function openBytes(bytes: Uint8Array): Promise<OpenedFile> {
  const outcome = await openWorkbookFile(bytes, "two-day-shoot.xlsx", "book");
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.problem));
  return outcome.value;
}

export const openSample = (): Promise<OpenedFile> => openBytes(new Uint8Array(readFileSync(samplePath)));

/** A grid in which nobody touched anything, without a grid. */
export function untouched(file: OpenedFile): SavingBook {
  const tables = openedTables(file.data);
  const sheets = file.book.sheets.map(({ sheetId, name, state }): SavingSheet => {
    const data = file.data.sheets[sheetId] ?? {};
    const cells = openedState(data, file.data.styles);
    return {
      sheetId,
      name,
      hidden: state !== "visible",
      state: cells,
      rowData: data.rowData ?? {},
      columns: columnStates({ columnData: data.columnData ?? {} }),
      freeze: { rows: data.freeze?.ySplit ?? 0, columns: data.freeze?.xSplit ?? 0 },
      merges: [],
      lists: listsIn(file, sheetId),
      formats: formatsOf(resourceOf<GridFormat[]>(file.data, "SHEET_CONDITIONAL_FORMATTING_PLUGIN")[sheetId] ?? []),
      filter: file.filters.get(sheetId)?.filter ?? null,
      filteredRows: file.filters.get(sheetId)?.rows ?? new Set(),
      tables: (tables[sheetId] ?? []).map((table) => ({
        name: table.name,
        filters: file.filters.get(sheetId)?.ofTables.get(table.name) ?? [],
        reference: reference(table),
        headings: Array.from({ length: table.columnCount }, (_, index) =>
          String(cells.get(table.row)?.get(table.column + index)?.value ?? ""),
        ),
      })),
    };
  });
  return { sheets, activeSheet: 0, structure: [], kept: new Map() };
}

function listsIn(file: OpenedFile, sheetId: string): SavingList[] {
  const rules = resourceOf<{ formula1: string; showErrorMessage: boolean; ranges: Area[] }[]>(
    file.data,
    "SHEET_DATA_VALIDATION_PLUGIN",
  )[sheetId];
  return (rules ?? []).map(({ formula1, showErrorMessage, ranges }) => ({
    reference: ranges.map(referenceOf).join(" "),
    source: formula1,
    isStrict: showErrorMessage,
  }));
}

function reference({ row, column, rowCount, columnCount }: TableArea): string {
  return `${cellName(row, column)}:${cellName(row + rowCount - 1, column + columnCount - 1)}`;
}

/** The book with some cells of one sheet holding something else. */
export function withCells(
  book: SavingBook,
  sheetName: string,
  cells: Readonly<Record<string, Partial<CellState>>>,
): SavingBook {
  const sheets = book.sheets.map((sheet) => {
    if (sheet.name !== sheetName) return sheet;
    const state = new Map([...sheet.state].map(([row, line]) => [row, new Map(line)]));
    for (const [name, change] of Object.entries(cells)) {
      const area = areaOfReference(name);
      if (area === null) throw new Error(name);
      const line = state.get(area.startRow) ?? new Map<number, CellState>();
      const held = line.get(area.startColumn) ?? {
        value: null,
        formula: null,
        spill: null,
        spilled: false,
        look: PLAIN,
      };
      state.set(area.startRow, line.set(area.startColumn, { ...held, ...change }));
    }
    return { ...sheet, state };
  });
  return { ...book, sheets };
}

const PLAIN: CellState["look"] = {
  pattern: "General",
  bold: false,
  italic: false,
  ink: null,
  background: null,
  wrap: false,
  across: null,
  lines: { left: null, right: null, top: null, bottom: null },
};
