import type { ICellData } from "@univerjs/core";
import type { ISetRangeValuesCommandParams } from "@univerjs/sheets";
import type { Grid } from "./createGrid";
import { rowReferences } from "./rowReferences";
import { tableAt } from "./tableAt";

/** Rewrites [@Column] in every formula that is typed, pasted or filled, before the engine reads it. */
export function spellOutRowReferences({ api }: Grid): void {
  api.addEvent(api.Event.BeforeCommandExecute, ({ id, params }) => {
    if (id !== "sheet.command.set-range-values") return;
    const { unitId, subUnitId, range, value } = params as ISetRangeValuesCommandParams;
    const workbook = unitId === undefined ? api.getActiveWorkbook() : api.getWorkbook(unitId);
    if (workbook === null || value === undefined || value === null) return;
    const sheetId = subUnitId ?? workbook.getActiveSheet().getSheetId();
    const spellOut = (cell: ICellData | null | undefined, row: number, column: number) => {
      if (typeof cell?.f !== "string" || !cell.f.includes("[@")) return;
      cell.f = rowReferences(cell.f, tableAt(workbook, sheetId, row, column)?.name ?? null);
    };
    const first = Array.isArray(range) ? range[0] : range;
    const corner = first !== undefined && "startRow" in first ? first : { startRow: 0, startColumn: 0 };
    if (Array.isArray(value)) {
      value.forEach((line, row) =>
        line.forEach((cell, column) => spellOut(cell, corner.startRow + row, corner.startColumn + column)),
      );
    } else if (isCell(value)) {
      spellOut(value, corner.startRow, corner.startColumn);
    } else {
      for (const [row, line] of Object.entries(value)) {
        for (const [column, cell] of Object.entries(line ?? {})) {
          spellOut(cell as ICellData, Number(row), Number(column));
        }
      }
    }
  });
}

function isCell(value: object): value is ICellData {
  return "f" in value || "v" in value || "p" in value || "s" in value;
}
