import type { ICellData } from "@univerjs/core";
import type { ISetRangeValuesCommandParams } from "@univerjs/sheets";
import type { Grid } from "./createGrid";
import { rowReferences } from "./rowReferences";
import { tableAt } from "./tableAt";
import { withCommas } from "./withCommas";

/** Puts [@Column] and semicolons between arguments, in every formula that is typed, pasted or filled, into the form the engine reads. */
export function readTypedFormulas({ api }: Grid): void {
  api.addEvent(api.Event.BeforeCommandExecute, ({ id, params }) => {
    if (id !== "sheet.command.set-range-values") return;
    const { unitId, subUnitId, range, value } = params as ISetRangeValuesCommandParams;
    const workbook = unitId === undefined ? api.getActiveWorkbook() : api.getWorkbook(unitId);
    if (workbook === null || value === undefined || value === null) return;
    const sheetId = subUnitId ?? workbook.getActiveSheet().getSheetId();
    const read = (cell: ICellData | null | undefined, row: number, column: number) => {
      if (typeof cell?.f !== "string") return;
      cell.f = withCommas(cell.f);
      if (cell.f.includes("[@")) cell.f = rowReferences(cell.f, tableAt(workbook, sheetId, row, column)?.name ?? null);
    };
    const first = Array.isArray(range) ? range[0] : range;
    const corner = first !== undefined && "startRow" in first ? first : { startRow: 0, startColumn: 0 };
    if (Array.isArray(value)) {
      value.forEach((line, row) =>
        line.forEach((cell, column) => read(cell, corner.startRow + row, corner.startColumn + column)),
      );
    } else if (isCell(value)) {
      read(value, corner.startRow, corner.startColumn);
    } else {
      for (const [row, line] of Object.entries(value)) {
        for (const [column, cell] of Object.entries(line ?? {})) {
          read(cell as ICellData, Number(row), Number(column));
        }
      }
    }
  });
}

function isCell(value: object): value is ICellData {
  return "f" in value || "v" in value || "p" in value || "s" in value;
}
