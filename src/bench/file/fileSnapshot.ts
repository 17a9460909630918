import { BooleanNumber, ObjectMatrix } from "@univerjs/core";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { collectCells } from "../port/collectCells";
import { heldCell } from "../port/heldCell";
import { openedTables } from "./openedTables";
import type { OpenedFile } from "./openWorkbookFile";

/** A file's workbook as the port would tell it, before it is laid out in the grid: formulas with their kept results. */
export function fileSnapshot({ data, book, fileName }: OpenedFile): WorkbookSnapshot {
  const tables = openedTables(data);
  const sheets = data.sheetOrder.map((sheetId) => {
    const sheet = data.sheets[sheetId];
    const cells = collectCells();
    new ObjectMatrix(sheet?.cellData ?? {}).forValue((row, column, cell) => {
      cells.put(row, column, heldCell(cell), cell.f || null);
    });
    return {
      sheetId,
      name: sheet?.name ?? "",
      visible: sheet?.hidden !== BooleanNumber.TRUE,
      isProtected: book.sheets.some((held) => held.sheetId === sheetId && held.isProtected),
      ...cells.usedRange(),
      tables: tables[sheetId] ?? [],
    };
  });
  return { name: fileName, dateSystem: book.dateSystem, sheets };
}
