import { dateFields } from "../../sheet/dateFields";
import type { CellPosition } from "../../sheet/cellPosition";
import type { SheetTable } from "../../sheet/sheetTable";
import { tableAt } from "../../sheet/tableAt";

/** Whether a cell stands in a column that holds dates, so that 46086 is shown as the day it is. */
export function isDateCell(at: CellPosition, tables: readonly SheetTable[]): boolean {
  const table = tableAt(at, tables);
  if (table === undefined) return false;
  const column = at.column - table.firstColumn;
  return (dateFields[table.kind] ?? []).some((field) => table.columnOf[field] === column);
}
