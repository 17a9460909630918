import { fail } from "../../src/domain/fail";
import type { Outcome } from "../../src/domain/outcome";
import { succeed } from "../../src/domain/succeed";
import type { BuildPlan, NewColumns, NewRows } from "../../src/sheet/buildPlan";
import type { Cell } from "../../src/sheet/cell";
import type { CellEdit, WriteReceipt } from "../../src/sheet/cellEdit";
import type { CellArea } from "../../src/sheet/cellArea";
import type { CellPosition } from "../../src/sheet/cellPosition";
import { refusePlan } from "../../src/sheet/refusePlan";
import type { SheetChange, SheetPort } from "../../src/sheet/SheetPort";
import type { SheetSnapshot, TableArea, WorkbookSnapshot } from "../../src/sheet/sheetSnapshot";

/** A sheet as a test writes it down: name and rows, headings first. */
export interface FakeSheet {
  readonly name: string;
  readonly rows: readonly (readonly Cell[])[];
  /** Formulas by "row,column"; the cell shows what `rows` says. */
  readonly formulas?: Readonly<Record<string, string>>;
  readonly tables?: readonly TableArea[];
  readonly pictures?: readonly FakePicture[];
}

/** A picture over a cell of a sheet. */
interface FakePicture {
  readonly row: number;
  readonly column: number;
  readonly name: string;
  /** null for a kind that nothing can show. */
  readonly dataUrl: string | null;
}

/** The port, and what the user behind its back can do. */
export interface FakePort extends SheetPort {
  readonly typed: (sheetId: string, row: number, column: number, value: Cell) => void;
  readonly deleteSheet: (sheetId: string) => void;
  readonly renameSheet: (sheetId: string, name: string) => void;
  readonly protectSheet: (sheetId: string) => void;
  /** The next calls of that name come back with this problem. */
  readonly failNext: (
    call:
      "readWorkbook" | "readSheet" | "write" | "build" | "writeKept" | "readKept" | "goTo" | "restore" | "selection",
  ) => void;
  readonly select: (area: CellArea) => void;
  readonly at: (sheetId: string, row: number, column: number) => Cell;
  readonly formulaAt: (sheetId: string, row: number, column: number) => string | null;
  readonly calls: readonly string[];
  readonly wentTo: readonly CellPosition[];
  readonly kept: ReadonlyMap<string, string>;
}

const broken = (call: string): Outcome<never> =>
  fail("argument-not-usable", { argument: call, given: "the workbook", expected: "it a moment and try again" });

/** An in-memory workbook behind the port the pane works with. Sheet ids are "s0", "s1" in the order given. */
export function fakePort(
  sheets: readonly FakeSheet[],
  options: { readonly name?: string; readonly dateSystem?: 1900 | 1904 } = {},
): FakePort {
  const held = new Map(
    sheets.map((sheet, index) => [
      `s${index}`,
      {
        name: sheet.name,
        rows: sheet.rows.map((row) => [...row]),
        formulas: new Map<string, string>(Object.entries(sheet.formulas ?? {})),
        tables: sheet.tables ?? ([] as readonly TableArea[]),
        pictures: sheet.pictures ?? ([] as readonly FakePicture[]),
        isProtected: false,
      },
    ]),
  );
  const listeners = new Set<(changes: readonly SheetChange[]) => void>();
  const failing = new Set<string>();
  const calls: string[] = [];
  const wentTo: CellPosition[] = [];
  const kept = new Map<string, string>();
  let selected: CellArea = { sheetId: "s0", row: 0, column: 0, rowCount: 1, columnCount: 1 };

  const tell = (sheetId: string, sheetsChanged = false): void => {
    for (const listener of listeners) listener([{ sheetId, area: null, sheetsChanged }]);
  };
  const isBroken = (call: string): boolean => {
    calls.push(call);
    return failing.delete(call);
  };
  const snapshot = (sheetId: string): SheetSnapshot | null => {
    const sheet = held.get(sheetId);
    if (sheet === undefined) return null;
    const width = Math.max(0, ...sheet.rows.map((row) => row.length));
    const columns = Array.from({ length: width }, (_, column) => column);
    return {
      sheetId,
      name: sheet.name,
      visible: true,
      isProtected: sheet.isProtected,
      firstRow: 0,
      firstColumn: 0,
      values: sheet.rows.map((row) => columns.map((column) => row[column] ?? null)),
      // Most sheets of a test have none, and a large one is read again after every edit.
      formulas: sheet.rows.map((_, row) =>
        columns.map((column) => (sheet.formulas.size === 0 ? null : (sheet.formulas.get(`${row},${column}`) ?? null))),
      ),
      tables: sheet.tables,
    };
  };
  const formulaAt = ({ sheetId, row, column }: CellPosition): string | undefined =>
    held.get(sheetId)?.formulas.get(`${row},${column}`);
  const cellAt = ({ sheetId, row, column }: CellPosition): Cell => held.get(sheetId)?.rows[row]?.[column] ?? null;
  const put = ({ sheetId, row, column }: CellPosition, value: Cell, formula?: string): void => {
    const sheet = held.get(sheetId);
    if (sheet === undefined) throw new Error(`no sheet ${sheetId}`);
    while (sheet.rows.length <= row) sheet.rows.push([]);
    const cells = sheet.rows[row];
    if (cells === undefined) return;
    while (cells.length < column) cells.push(null);
    cells[column] = value;
    if (formula === undefined) sheet.formulas.delete(`${row},${column}`);
    else sheet.formulas.set(`${row},${column}`, formula);
  };
  const writeAll = (label: string, edits: readonly CellEdit[]): Outcome<WriteReceipt> => {
    for (const edit of edits) {
      const sheet = held.get(edit.at.sheetId);
      if (sheet === undefined)
        return fail("argument-not-usable", {
          argument: label,
          given: "a sheet that is gone",
          expected: "a sheet that is still there",
        });
      if (sheet.isProtected)
        return fail("argument-not-usable", {
          argument: label,
          given: sheet.name,
          expected: "a sheet that is not protected",
        });
      const isAsExpected =
        edit.expectedFormula === undefined
          ? formulaAt(edit.at) === undefined && JSON.stringify(cellAt(edit.at)) === JSON.stringify(edit.expected)
          : formulaAt(edit.at) === edit.expectedFormula;
      if (!isAsExpected)
        return fail("argument-not-usable", {
          argument: label,
          given: String(cellAt(edit.at)),
          expected: "the cell as it was when checked",
        });
    }
    const prior = edits.map((edit) => ({
      at: edit.at,
      expected: edit.value,
      ...(edit.formula !== undefined && { expectedFormula: edit.formula }),
      value: cellAt(edit.at),
      ...(formulaAt(edit.at) !== undefined && { formula: formulaAt(edit.at) }),
    }));
    for (const edit of edits) put(edit.at, edit.value, edit.formula);
    for (const sheetId of new Set(edits.map((edit) => edit.at.sheetId))) tell(sheetId);
    return succeed({ label, prior });
  };

  const allPictures = () =>
    [...held].flatMap(([sheetId, { pictures }]) =>
      pictures.map(({ row, column, name, dataUrl }, index) => ({
        key: `${sheetId} ${index}`,
        at: { sheetId, row, column },
        name,
        dataUrl,
      })),
    );
  const wholeWorkbook = (): WorkbookSnapshot => ({
    name: options.name ?? "shoot.xlsx",
    dateSystem: options.dateSystem ?? 1900,
    sheets: [...held.keys()].flatMap((sheetId) => snapshot(sheetId) ?? []),
  });
  let sheetsMade = sheets.length;
  const buildAll = (label: string, plan: BuildPlan): Outcome<WriteReceipt> => {
    const refusal = refusePlan(wholeWorkbook(), plan);
    if (refusal !== null) return refusal;
    const made = plan.addSheets.map((sheet) => {
      const sheetId = `s${sheetsMade++}`;
      const { name, tableName, headings } = sheet;
      const rows = [headings, ...sheet.rows].map((row) => [...row]);
      const area = { row: 0, column: 0, rowCount: rows.length, columnCount: headings.length };
      held.set(sheetId, {
        name,
        rows,
        formulas: new Map(),
        tables: [{ name: tableName, ...area }],
        pictures: [],
        isProtected: false,
      });
      return { sheetId, sheet };
    });
    const change = ({ sheetId, tableName, row, column, headings }: NewColumns, isAdded: boolean): void => {
      const sheet = held.get(sheetId);
      if (sheet === undefined) return;
      headings.forEach((heading, index) => put({ sheetId, row, column: column + index }, isAdded ? heading : null));
      const more = isAdded ? headings.length : -headings.length;
      sheet.tables = sheet.tables.map((table) =>
        table.name === tableName ? { ...table, columnCount: table.columnCount + more } : table,
      );
    };
    for (const columns of plan.addColumns) change(columns, true);
    for (const columns of plan.removeColumns) change(columns, false);
    const { addRows = [], removeRows = [] } = plan;
    const changeRows = ({ sheetId, tableName, row, column, rows }: NewRows, isAdded: boolean): void => {
      rows.forEach((cells, down) =>
        cells.forEach((cell, along) =>
          put({ sheetId, row: row + down, column: column + along }, isAdded ? cell : null),
        ),
      );
      const sheet = held.get(sheetId);
      if (sheet === undefined) return;
      const more = isAdded ? rows.length : -rows.length;
      sheet.tables = sheet.tables.map((table) =>
        table.name === tableName ? { ...table, rowCount: table.rowCount + more } : table,
      );
    };
    for (const rows of addRows) changeRows(rows, true);
    for (const rows of removeRows) changeRows(rows, false);
    for (const { sheetId } of plan.removeSheets) held.delete(sheetId);
    tell("", true);
    const opposite: BuildPlan = {
      addSheets: plan.removeSheets.map(({ sheet }) => sheet),
      removeSheets: made,
      addColumns: plan.removeColumns,
      removeColumns: plan.addColumns,
      addRows: removeRows,
      removeRows: addRows,
    };
    return succeed({ label, prior: [], opposite });
  };

  return {
    calls,
    wentTo,
    kept,
    readWorkbook: async () => {
      if (isBroken("readWorkbook")) return broken("Reading");
      return succeed(wholeWorkbook());
    },
    readSheet: async (sheetId) => {
      const read = isBroken("readSheet") ? null : snapshot(sheetId);
      return read === null ? broken("Reading") : succeed(read);
    },
    listPictures: async () => succeed(allPictures().map(({ key, at, name }) => ({ key, at, name }))),
    showPictures: async (keys) =>
      succeed(
        new Map(
          allPictures().flatMap(({ key, dataUrl }) =>
            keys.includes(key) && dataUrl !== null ? [[key, dataUrl] as const] : [],
          ),
        ),
      ),
    goTo: async (at) => {
      if (isBroken("goTo") || !held.has(at.sheetId)) return broken("Go to cell");
      wentTo.push(at);
      return succeed(undefined);
    },
    activeCell: async () => succeed({ sheetId: selected.sheetId, row: selected.row, column: selected.column }),
    selection: async () => (isBroken("selection") ? broken("Selection") : succeed(selected)),
    select: (area) => {
      selected = area;
    },
    write: async (label, edits) => (isBroken("write") ? broken("Writing") : writeAll(label, edits)),
    build: async (label, plan) => (isBroken("build") ? broken("Building") : buildAll(label, plan)),
    restore: async ({ label, prior, opposite }) => {
      if (isBroken("restore")) return broken("Restore");
      return opposite === undefined ? writeAll(label, prior) : buildAll(label, opposite);
    },
    readKept: async (key) => (isBroken("readKept") ? broken("Reading") : succeed(kept.get(key) ?? null)),
    writeKept: async (key, text) => {
      if (isBroken("writeKept")) return broken("Keeping");
      kept.set(key, text);
      return succeed(undefined);
    },
    onChange: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    typed: (sheetId, row, column, value) => {
      put({ sheetId, row, column }, value);
      tell(sheetId);
    },
    deleteSheet: (sheetId) => {
      held.delete(sheetId);
      tell(sheetId, true);
    },
    renameSheet: (sheetId, name) => {
      const sheet = held.get(sheetId);
      if (sheet !== undefined) sheet.name = name;
      tell(sheetId, true);
    },
    protectSheet: (sheetId) => {
      const sheet = held.get(sheetId);
      if (sheet !== undefined) sheet.isProtected = true;
    },
    failNext: (call) => void failing.add(call),
    at: (sheetId, row, column) => cellAt({ sheetId, row, column }),
    formulaAt: (sheetId, row, column) => formulaAt({ sheetId, row, column }) ?? null,
  };
}
