import { contentAt, type FakeArea, type FakeSheet, type FakeWorkbook, hostError, shownCells } from "./fakeWorkbook";
import { shapeModels } from "./pictureBehaviours";

/** What stands behind an object of the fake. */
export type Model = Record<string, unknown>;

/** A range as the fake holds it. */
export interface RangeModel extends FakeArea {
  readonly sheet: FakeSheet;
}

/** The navigation properties: objects of their own, by owner and name. */
export const PARTS: Readonly<Record<string, string>> = {
  "Workbook.worksheets": "WorksheetCollection",
  "Workbook.tables": "TableCollection",
  "Workbook.customXmlParts": "CustomXmlPartCollection",
  "Workbook.functions": "Functions",
  "Worksheet.protection": "WorksheetProtection",
  "Worksheet.tables": "TableCollection",
  "Worksheet.shapes": "ShapeCollection",
  "Worksheet.freezePanes": "WorksheetFreezePanes",
  "Range.format": "RangeFormat",
  "Range.dataValidation": "DataValidation",
  "Table.worksheet": "Worksheet",
  "Range.worksheet": "Worksheet",
  "RangeAreas.areas": "RangeCollection",
};

/** What a collection holds. */
export const ITEM_KINDS: Readonly<Record<string, string>> = {
  WorksheetCollection: "Worksheet",
  TableCollection: "Table",
  CustomXmlPartScopedCollection: "CustomXmlPart",
  RangeCollection: "Range",
  ShapeCollection: "Shape",
};

export function partModel(owner: Model, path: string): Model {
  if (path === "Workbook.worksheets") return { items: () => (owner as unknown as FakeWorkbook).sheets };
  if (path === "Workbook.tables")
    return { items: () => (owner as unknown as FakeWorkbook).sheets.flatMap(tableModels) };
  if (path === "Worksheet.shapes") return { items: () => shapeModels(owner as unknown as FakeSheet) };
  if (path === "Worksheet.tables") return { items: () => tableModels(owner as unknown as FakeSheet) };
  if (path === "Table.worksheet" || path === "Range.worksheet") return owner.sheet as Model;
  if (path === "RangeAreas.areas") return { items: () => owner.areas };
  return owner;
}

function tableModels(sheet: FakeSheet): object[] {
  return sheet.tables.map((table) => ({ ...table, sheet }));
}

export function sheetById(workbook: FakeWorkbook, id: string): Model {
  const sheet = workbook.sheets.find((each) => each.id === id);
  if (sheet === undefined) throw hostError("ItemNotFound", "The requested resource doesn't exist");
  return sheet as unknown as Model;
}

export function rangeModel(
  sheet: Model,
  rowIndex: number,
  columnIndex: number,
  rowCount: number,
  columnCount: number,
): Model {
  return { sheet, rowIndex, columnIndex, rowCount, columnCount };
}

export function usedRange(sheet: FakeSheet): Model | null {
  const places = [...shownCells(sheet).keys()].map((key) => key.split(",").map(Number));
  if (places.length === 0) return null;
  const rows = places.map(([row = 0]) => row);
  const columns = places.map(([, column = 0]) => column);
  const [top, left] = [Math.min(...rows), Math.min(...columns)];
  return rangeModel(sheet as unknown as Model, top, left, Math.max(...rows) - top + 1, Math.max(...columns) - left + 1);
}

export function overlap(one: FakeArea, other: FakeArea): boolean {
  return (
    one.rowIndex < other.rowIndex + other.rowCount &&
    other.rowIndex < one.rowIndex + one.rowCount &&
    one.columnIndex < other.columnIndex + other.columnCount &&
    other.columnIndex < one.columnIndex + one.columnCount
  );
}

export function propertyOf(kind: string, model: Model, member: string, workbook: FakeWorkbook): unknown {
  if (kind === "Workbook") return "Strict.xlsx";
  if (kind === "WorksheetProtection") return model.isProtected;
  if (kind !== "Range" || !["values", "valueTypes", "formulas", "numberFormat", "hasSpill"].includes(member)) {
    return model[member];
  }
  const { sheet, rowIndex, columnIndex, rowCount, columnCount } = model as unknown as RangeModel;
  if (!workbook.sheets.includes(sheet)) throw hostError("ItemNotFound", "The requested resource doesn't exist");
  const shown = shownCells(sheet);
  const each = <T>(of: (row: number, column: number) => T): T[][] =>
    Array.from({ length: rowCount }, (_, r) =>
      Array.from({ length: columnCount }, (_, c) => of(rowIndex + r, columnIndex + c)),
    );
  const at = (row: number, column: number) => shown.get(`${row},${column}`);
  if (member === "values") return each((row, column) => at(row, column)?.value ?? "");
  if (member === "formulas") return each((row, column) => at(row, column)?.formula ?? "");
  if (member === "valueTypes") return each((row, column) => at(row, column)?.type ?? "Empty");
  if (member === "numberFormat") return each((row, column) => contentAt(sheet, row, column).format);
  const spills = each((row, column) => at(row, column)?.isSpilled === true || isSpillAnchor(shown, row, column)).flat();
  return spills.every(Boolean) ? true : spills.some(Boolean) ? null : false;
}

function isSpillAnchor(shown: ReturnType<typeof shownCells>, row: number, column: number): boolean {
  const here = shown.get(`${row},${column}`);
  return typeof here?.formula === "string" && shown.get(`${row + 1},${column}`)?.isSpilled === true;
}
