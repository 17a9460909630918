import type { FakeArea, FakeSheet, FakeWorkbook } from "./fakeWorkbook";

/** Raises the events of an edit: the edit itself and, where formulas stand on the sheet, their recalculation. */
export function tellEdit(workbook: FakeWorkbook, sheet: FakeSheet, area: FakeArea): void {
  const name = (row: number, column: number): string => `${String.fromCharCode(65 + column)}${row + 1}`;
  const { rowIndex, columnIndex, rowCount, columnCount } = area;
  const address = `${name(rowIndex, columnIndex)}:${name(rowIndex + rowCount - 1, columnIndex + columnCount - 1)}`;
  workbook.tell({ name: "onChanged", worksheetId: sheet.id, address, changeType: "RangeEdited" });
  if ([...sheet.cells.values()].some((content) => content.formula !== undefined)) {
    workbook.tell({ name: "onCalculated", worksheetId: sheet.id, address: "", changeType: "" });
  }
}
