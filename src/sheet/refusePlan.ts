import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import type { BuildPlan, BuiltSheet, NewColumns, NewRows, NewSheet } from "./buildPlan";
import type { Cell } from "./cell";
import type { CellPosition } from "./cellPosition";
import { listCells } from "./listCells";
import { sameCell } from "./sameCell";
import type { SheetSnapshot, WorkbookSnapshot } from "./sheetSnapshot";

/**
 * Why a plan must not be carried out, by the workbook as it stands, or null.
 *
 * Nothing that somebody typed is lost: new columns need blank cells, and only what holds exactly what was built is taken
 * away. Problems: sheet-gone, sheet-protected, cells-changed, host-refused where a name is taken or a table has moved.
 */
export function refusePlan(workbook: WorkbookSnapshot, plan: BuildPlan): Outcome<never> | null {
  return (
    firstOf(plan.addSheets, (sheet) => refuseNames(workbook, plan, sheet)) ??
    firstOf(plan.removeSheets, (built) => refuseRemoval(workbook, built)) ??
    firstOf(plan.addColumns, (columns) => refuseColumns(workbook, columns, false)) ??
    firstOf(plan.removeColumns, (columns) => refuseColumns(workbook, columns, true)) ??
    firstOf(plan.addRows ?? [], (rows) => refuseRows(workbook, rows, false)) ??
    firstOf(plan.removeRows ?? [], (rows) => refuseRows(workbook, rows, true))
  );
}

function firstOf<T>(list: readonly T[], refuse: (one: T) => Outcome<never> | null): Outcome<never> | null {
  for (const one of list) {
    const refusal = refuse(one);
    if (refusal !== null) return refusal;
  }
  return null;
}

function refuseNames(workbook: WorkbookSnapshot, plan: BuildPlan, wanted: NewSheet): Outcome<never> | null {
  const { name: sheetName, tableName } = wanted;
  const isIn = (names: readonly string[], name: string): boolean =>
    names.some((other) => other.toLowerCase() === name.toLowerCase());
  const tables = workbook.sheets.flatMap((sheet) => sheet.tables.map((table) => table.name));
  const sheets = workbook.sheets.map((sheet) => sheet.name);
  const twice = plan.addSheets.filter((sheet) => sheet.name.toLowerCase() === sheetName.toLowerCase()).length > 1;
  if (!isIn(sheets, sheetName) && !isIn(tables, tableName) && !twice) return null;
  const name = isIn(tables, tableName) ? tableName : sheetName;
  const remedy = "rename the sheet or the table of that name, then try again";
  return fail("host-refused", { doing: "build it", detail: `the name "${name}" is taken`, remedy });
}

function refuseRemoval(workbook: WorkbookSnapshot, { sheetId, sheet: built }: BuiltSheet): Outcome<never> | null {
  const sheet = workbook.sheets.find((one) => one.sheetId === sheetId);
  if (sheet === undefined) return fail("sheet-gone", { doing: "take it away again" });
  const wanted: readonly (readonly Cell[])[] = [built.headings, ...built.rows];
  const rowCount = Math.max(wanted.length, sheet.firstRow + sheet.values.length);
  const columnCount = Math.max(built.headings.length, sheet.firstColumn + (sheet.values[0]?.length ?? 0));
  const changed: CellPosition[] = [];
  for (let row = 0; row < rowCount; row++) {
    for (let column = 0; column < columnCount; column++) {
      const isAsBuilt =
        sameCell(cellAt(sheet, row, column), wanted[row]?.[column] ?? null) && !hasFormula(sheet, row, column);
      if (!isAsBuilt) changed.push({ sheetId, row, column });
    }
  }
  return changed.length === 0 ? null : fail("cells-changed", { sheet: sheet.name, cells: listCells(changed) });
}

function refuseColumns(workbook: WorkbookSnapshot, columns: NewColumns, isBuilt: boolean): Outcome<never> | null {
  const { sheetId, tableName, row, column, rowCount, headings } = columns;
  const sheet = workbook.sheets.find((one) => one.sheetId === sheetId);
  if (sheet === undefined) return fail("sheet-gone", { doing: isBuilt ? "take the columns away again" : "add to it" });
  if (sheet.isProtected) return fail("sheet-protected", { sheet: sheet.name });
  const table = tableName === null ? null : sheet.tables.find(({ name }) => name === tableName);
  const end = isBuilt ? column + headings.length : column;
  if (table === undefined || (table !== null && (table.row !== row || table.column + table.columnCount !== end))) {
    const detail = `the table "${tableName ?? ""}" is not where it was`;
    return fail("host-refused", { doing: "change its columns", detail, remedy: "look at the sheet again" });
  }
  // The table may have grown since it was looked at.
  const height = Math.max(rowCount, table?.rowCount ?? 0);
  const changed: CellPosition[] = [];
  for (let down = 0; down < height; down++) {
    for (let along = 0; along < headings.length; along++) {
      const wanted = isBuilt && down === 0 ? headings[along]! : null;
      const at = { sheetId, row: row + down, column: column + along };
      const isAsWanted = sameCell(cellAt(sheet, at.row, at.column), wanted) && !hasFormula(sheet, at.row, at.column);
      if (!isAsWanted) changed.push(at);
    }
  }
  return changed.length === 0 ? null : fail("cells-changed", { sheet: sheet.name, cells: listCells(changed) });
}

function refuseRows(workbook: WorkbookSnapshot, added: NewRows, isBuilt: boolean): Outcome<never> | null {
  const { sheetId, tableName, row, column, rows } = added;
  const sheet = workbook.sheets.find((one) => one.sheetId === sheetId);
  if (sheet === undefined) return fail("sheet-gone", { doing: isBuilt ? "take the rows away again" : "add to it" });
  if (sheet.isProtected) return fail("sheet-protected", { sheet: sheet.name });
  const table = sheet.tables.find(({ name }) => name === tableName);
  const end = isBuilt ? row + rows.length : row;
  if (table?.column !== column || table.row + table.rowCount !== end) {
    const detail = `the table "${tableName}" is not where it was`;
    return fail("host-refused", { doing: "change its rows", detail, remedy: "look at the sheet again" });
  }
  const changed = rows.flatMap((cells, down) =>
    cells.flatMap((cell, along) => {
      const at = { sheetId, row: row + down, column: column + along };
      const isAsWanted =
        sameCell(cellAt(sheet, at.row, at.column), isBuilt ? cell : null) && !hasFormula(sheet, at.row, at.column);
      return isAsWanted ? [] : [at];
    }),
  );
  return changed.length === 0 ? null : fail("cells-changed", { sheet: sheet.name, cells: listCells(changed) });
}

function cellAt(sheet: SheetSnapshot, row: number, column: number): Cell {
  return sheet.values[row - sheet.firstRow]?.[column - sheet.firstColumn] ?? null;
}

function hasFormula(sheet: SheetSnapshot, row: number, column: number): boolean {
  return (sheet.formulas[row - sheet.firstRow]?.[column - sheet.firstColumn] ?? null) !== null;
}
