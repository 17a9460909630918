import type { SheetTable } from "../sheet/sheetTable";

const OWN_ROW = /\[@|\[#This Row\]/;
/** F5 or F$5: a cell that would be another one in another row. */
const RELATIVE = /(?<![$\w.!'])\$?[A-Z]{1,3}\d{1,7}(?![\w(])/;
const TEXTS = /"(?:[^"]|"")*"/g;

/** The first of our formulas in a column that reads its row by headings alone, so that it says the same in any row; null where there is none. */
export function rowFormula(table: SheetTable, field: string): string | null {
  const column = table.columnOf[field];
  if (column === undefined) return null;
  for (const row of table.dataRows) {
    const formula = table.formulas[row]?.[column] ?? null;
    if (formula === null || !OWN_ROW.test(formula) || !/TACK[._]/.test(formula)) continue;
    if (!RELATIVE.test(formula.replace(TEXTS, '""'))) return formula;
  }
  return null;
}
