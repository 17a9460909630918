import { CellValueType, type ICellData, type Nullable } from "@univerjs/core";
import { ErrorType } from "@univerjs/engine-formula";
import type { Cell } from "../../sheet/cell";

const ERRORS: ReadonlySet<string> = new Set(Object.values(ErrorType));

/** What a cell of the grid holds, as every host tells it. */
export function heldCell(cell: Nullable<ICellData>): Cell {
  if (!cell) return null;
  const value = cell.v ?? cell.p?.body?.dataStream.replace(/[\r\n]+$/, "");
  if (value === undefined || value === null || value === "") return null;
  if (typeof value === "boolean") return value;
  if (typeof value === "number") return cell.t === CellValueType.BOOLEAN ? value === 1 : value;
  if (ERRORS.has(value)) return { error: value };
  if (cell.t === CellValueType.BOOLEAN) return value === "1" || value.toUpperCase() === "TRUE";
  return cell.t === CellValueType.NUMBER && value.trim() !== "" && Number.isFinite(Number(value))
    ? Number(value)
    : value;
}
