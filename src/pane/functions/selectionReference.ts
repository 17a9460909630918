import type { CellArea } from "../../sheet/cellArea";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { areaReference } from "./areaReference";

/** What a formula calls the selected cells: a table by its name where all of it is selected, with or without its headings. */
export function selectionReference(area: CellArea, workbook: WorkbookSnapshot): string {
  const sheet = workbook.sheets.find(({ sheetId }) => sheetId === area.sheetId);
  const table = sheet?.tables.find(
    ({ row, column, rowCount, columnCount }) =>
      area.column === column &&
      area.columnCount === columnCount &&
      area.row + area.rowCount === row + rowCount &&
      (area.row === row || area.row === row + 1),
  );
  // One cell is meant as that cell, also where it is all of a table.
  const isOneCell = area.rowCount === 1 && area.columnCount === 1;
  if (table !== undefined && !isOneCell) return area.row === table.row ? `${table.name}[#All]` : `${table.name}[]`;
  return areaReference(sheet?.name ?? "", area);
}
