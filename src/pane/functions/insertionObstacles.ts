import { cellName } from "../../sheet/cellName";
import type { CellPosition } from "../../sheet/cellPosition";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { sayCell } from "../check/sayCell";

/** How many rows and columns a result fills. */
export interface ResultSize {
  readonly rowCount: number;
  readonly columnCount: number;
}

/** What stands in the way of a formula in a cell; each is a sentence for the user. */
export interface InsertionObstacles {
  /** The insertion may go on, but only when the user says so. */
  readonly warnings: readonly string[];
  /** The insertion makes no sense here. */
  readonly refusals: readonly string[];
}

const NAMED = 3;

/** What stands in the way of a formula at a cell, by the workbook as last read. `size` is null where the result is not known. */
export function insertionObstacles(
  workbook: WorkbookSnapshot,
  at: CellPosition,
  formula: string,
  size: ResultSize | null,
): InsertionObstacles {
  const sheet = workbook.sheets.find(({ sheetId }) => sheetId === at.sheetId);
  if (sheet === undefined) return { warnings: [], refusals: ["The sheet is no longer in the workbook."] };
  const name = cellName(at.row, at.column);
  const cellOf = (row: number, column: number) =>
    sheet.values[row - sheet.firstRow]?.[column - sheet.firstColumn] ?? null;
  const formulaOf = (row: number, column: number) =>
    sheet.formulas[row - sheet.firstRow]?.[column - sheet.firstColumn] ?? null;
  const warnings: string[] = [];
  const refusals: string[] = [];
  if (sheet.isProtected) refusals.push(`The sheet "${sheet.name}" is protected; lift the protection first.`);

  const around = sheet.tables.find(
    ({ row, column, rowCount, columnCount }) =>
      at.row >= row && at.row < row + rowCount && at.column >= column && at.column < column + columnCount,
  );
  const fills = size ?? { rowCount: 1, columnCount: 1 };
  const spills = fills.rowCount > 1 || fills.columnCount > 1;
  if (around !== undefined && spills) {
    refusals.push(
      `${name} is inside the table ${around.name}, where a result of several cells shows #SPILL!; choose a cell outside.`,
    );
  }
  if (around !== undefined && readsWhole(formula, around.name)) {
    refusals.push(`${name} is inside the table ${around.name}, which the formula reads itself; choose a cell outside.`);
  }
  for (const table of sheet.tables) {
    const isInRows = at.row > table.row && at.row < table.row + table.rowCount;
    if (readsOwnRow(formula, table.name) && !isInRows) {
      warnings.push(`The formula reads ${table.name} in its own row, and row ${at.row + 1} has none.`);
    }
  }
  const elsewhere = workbook.sheets.filter((one) => one !== sheet).flatMap(({ tables }) => tables);
  for (const { name: other } of elsewhere) {
    if (readsOwnRow(formula, other))
      warnings.push(`The formula reads ${other} in its own row, and ${other} is on another sheet.`);
  }
  const heldFormula = formulaOf(at.row, at.column);
  const held = cellOf(at.row, at.column);
  if (heldFormula !== null) warnings.push(`${name} holds the formula ${heldFormula}.`);
  else if (held !== null) warnings.push(`${name} holds ${sayCell(held, false)}.`);

  if (spills) {
    const inTheWay: string[] = [];
    for (let row = at.row; row < at.row + fills.rowCount; row++) {
      for (let column = at.column; column < at.column + fills.columnCount; column++) {
        if (row === at.row && column === at.column) continue;
        if (cellOf(row, column) !== null || formulaOf(row, column) !== null) inTheWay.push(cellName(row, column));
      }
    }
    if (inTheWay.length > 0) {
      const more = inTheWay.length > NAMED ? ` and ${inTheWay.length - NAMED} more` : "";
      warnings.push(
        `The result fills ${fills.rowCount} rows and ${fills.columnCount} columns; in the way, so that it shows #SPILL!: ${inTheWay.slice(0, NAMED).join(", ")}${more}.`,
      );
    }
  }
  return { warnings, refusals };
}

function readsOwnRow(formula: string, tableName: string): boolean {
  return formula.toLowerCase().includes(`${tableName.toLowerCase()}[@`);
}

/** Whether a formula names a table other than by a cell of its own row. */
function readsWhole(formula: string, tableName: string): boolean {
  const escaped = tableName.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  return new RegExp(`(?<![\\w.])${escaped}(?!\\[@)(?![\\w.])`, "i").test(formula.replace(/"(?:[^"]|"")*"/g, '""'));
}
