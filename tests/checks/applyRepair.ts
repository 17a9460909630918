import type { CheckedWorkbook } from "../../src/checks/checkedWorkbook";
import type { Repair } from "../../src/checks/finding";
import type { Cell } from "../../src/sheet/cell";

/**
 * The workbook after a repair, as a host would leave it: refused (an Error) when a cell holds something other than the edit
 * expects, or a formula the edit does not name. What a written formula comes to is not computed: it stands as `results` says.
 */
export function applyRepair(workbook: CheckedWorkbook, repair: Repair, results: readonly Cell[] = []): CheckedWorkbook {
  let written = 0;
  const tables = workbook.tables.map((table) => {
    const cells = table.cells.map((row) => [...row]);
    const formulas = table.formulas.map((row) => [...row]);
    repair.edits.forEach((edit, index) => {
      if (edit.at.sheetId !== table.sheetId) return;
      const row = edit.at.row - table.firstRow;
      const column = edit.at.column - table.firstColumn;
      if (cells[row] === undefined || column < 0 || column >= cells[row].length) return;
      const held = cells[row][column] === "" ? null : cells[row][column];
      if (JSON.stringify(held) !== JSON.stringify(edit.expected)) throw new Error(`the cell holds ${String(held)}`);
      if (formulas[row]![column] !== null && edit.expectedFormula === undefined)
        throw new Error("a formula stands there");
      cells[row][column] = edit.formula === undefined ? edit.value : (results[index] ?? null);
      formulas[row]![column] = edit.formula ?? null;
      written++;
    });
    return { ...table, cells, formulas };
  });
  if (written !== repair.edits.length) throw new Error("an edit lies outside the tables");
  return { ...workbook, tables };
}
