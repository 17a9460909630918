import { BooleanNumber, type IWorksheetData } from "@univerjs/core";
import type { ColumnState } from "./columnPatch";

/** The columns whose width or sight is not the usual one. */
export function columnStates({ columnData }: Pick<IWorksheetData, "columnData">): Map<number, ColumnState> {
  const states = new Map<number, ColumnState>();
  for (const [column, held] of Object.entries(columnData)) {
    if (held?.w === undefined && held?.hd !== BooleanNumber.TRUE) continue;
    states.set(Number(column), { width: held.w ?? 69, hidden: held.hd === BooleanNumber.TRUE });
  }
  return states;
}
