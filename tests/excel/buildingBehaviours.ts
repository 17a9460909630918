import type { Model, RangeModel } from "./excelModels";
import { type FakeSheet, type FakeWorkbook, hostError } from "./fakeWorkbook";

/** What the strict fake lends: how an object is made, how a command waits for the sync, and what stands behind an object. */
export interface FakeParts<State extends { readonly run: unknown }> {
  readonly workbook: FakeWorkbook;
  readonly proxied: (kind: string, run: State["run"], resolve: () => Model | null) => unknown;
  readonly queue: (state: State, command: () => void) => void;
  readonly model: (state: State) => Model;
  readonly modelOf: (proxy: object) => Model;
}

type FakeTable = FakeSheet["tables"][number];

/** A table that stays the same object while its name and area change. */
function liveTable(table: FakeTable, sheet: FakeSheet): Model {
  return Object.create(table, { sheet: { value: sheet } }) as Model;
}

/** Sets what can be set of a table, of a validation list. True when it was one of these. */
export function setBuilt(kind: string, model: Model, member: string, value: unknown, workbook: FakeWorkbook): boolean {
  if (kind === "Table" && member === "name") {
    const isTaken = workbook.sheets.some((sheet) => sheet.tables.some((table) => table.name === value));
    if (isTaken) throw hostError("InvalidArgument", "The table name is taken");
    (Object.getPrototypeOf(model) as { name: unknown }).name = value;
    return true;
  }
  if (kind !== "DataValidation" || (member !== "rule" && member !== "errorAlert")) return false;
  const { sheet, columnIndex } = model as unknown as RangeModel;
  sheet.lists.set(columnIndex, { ...sheet.lists.get(columnIndex), [member]: value });
  return true;
}

/** What the object model lets one build: sheets, tables, lists. As the real one, all of it happens at the sync. */
export function buildingBehaviours<State extends { readonly run: unknown }>(
  parts: FakeParts<State>,
): Record<string, Record<string, (state: State, args: unknown[]) => unknown>> {
  const { workbook, proxied, queue, model, modelOf } = parts;
  return {
    WorksheetCollection: {
      add: (state, [name]) => {
        let made: FakeSheet | null = null;
        queue(state, () => {
          if (workbook.sheets.some((sheet) => sheet.name.toLowerCase() === String(name).toLowerCase())) {
            throw hostError("ItemAlreadyExists", "A resource with the same name or identifier already exists.");
          }
          made = {
            id: `{built-${workbook.built++}}`,
            name: String(name),
            visibility: "Visible",
            isProtected: false,
            cells: new Map(),
            tables: [],
            merged: [],
            pictures: [],
            lists: new Map(),
          };
          workbook.sheets.push(made);
          workbook.tell({ name: "onAdded", worksheetId: made.id, address: "", changeType: "" });
        });
        return proxied("Worksheet", state.run, () => made as unknown as Model | null);
      },
    },
    Worksheet: {
      delete: (state) =>
        queue(state, () => {
          const sheet = model(state) as unknown as FakeSheet;
          if (workbook.sheets.length === 1)
            throw hostError("InvalidOperation", "A workbook must contain a visible sheet");
          workbook.sheets = workbook.sheets.filter((one) => one !== sheet);
          workbook.tell({ name: "onDeleted", worksheetId: sheet.id, address: "", changeType: "" });
        }),
    },
    TableCollection: {
      add: (state, [range, hasHeaders]) => {
        let made: Model | null = null;
        queue(state, () => {
          const { sheet, ...area } = modelOf(range as object) as unknown as RangeModel;
          if (hasHeaders !== true || area.rowCount < 2) throw hostError("InvalidArgument", "A table needs a row");
          const table = { name: `Table${workbook.built++}`, ...area };
          sheet.tables.push(table);
          made = liveTable(table, sheet);
        });
        return proxied("Table", state.run, () => made);
      },
      getItem: (state, [name]) =>
        proxied("Table", state.run, () => {
          for (const sheet of workbook.sheets) {
            const table = sheet.tables.find((one) => one.name === name);
            if (table !== undefined) return liveTable(table, sheet);
          }
          return null;
        }),
    },
    Table: {
      resize: (state, [range]) =>
        queue(state, () => {
          if (workbook.tablesRefuse)
            throw hostError("InvalidOperation", "This does not work while the table is filtered.");
          const { rowIndex, columnIndex, rowCount, columnCount } = modelOf(range as object) as unknown as RangeModel;
          Object.assign(Object.getPrototypeOf(model(state)), { rowIndex, columnIndex, rowCount, columnCount });
        }),
    },
    Range: {
      getResizedRange: (state, [rows, columns]) =>
        proxied("Range", state.run, () => {
          const range = model(state) as unknown as RangeModel;
          return {
            ...range,
            rowCount: range.rowCount + Number(rows),
            columnCount: range.columnCount + Number(columns),
          };
        }),
    },
    RangeFormat: { autofitColumns: (state) => queue(state, () => void model(state)) },
    WorksheetFreezePanes: { freezeRows: (state) => queue(state, () => void model(state)) },
  };
}
