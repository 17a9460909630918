import type { CellEdit } from "../../sheet/cellEdit";
import { sayCell } from "./sayCell";

/** What stands in a cell before and after an edit, for the preview. */
export function sayEdit(edit: CellEdit, isDate: boolean): { readonly before: string; readonly after: string } {
  const before = edit.expectedFormula ?? sayCell(edit.expected, isDate);
  return { before, after: edit.formula ?? sayCell(edit.value, isDate || edit.numberFormat === "yyyy-mm-dd") };
}
