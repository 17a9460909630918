import type { Probe } from "../sheet/contract/contractCase";
import { contentAt, type FakeSheet, type FakeWorkbook, fillCell, formatCell } from "./fakeWorkbook";
import type { StrictExcel } from "./strictExcel";
import { tellEdit } from "./tellEdit";

/** The user of the strict fake: acts on the workbook itself, not through Excel.run. */
export function strictProbe(workbook: FakeWorkbook, excel: StrictExcel): Required<Probe> {
  const sheetOf = (sheetId: string): FakeSheet => {
    const sheet = workbook.sheets.find((each) => each.id === sheetId);
    if (sheet === undefined) throw new Error(`there is no sheet ${sheetId}`);
    return sheet;
  };
  const one = (row: number, column: number) => ({ rowIndex: row, columnIndex: column, rowCount: 1, columnCount: 1 });
  const tellSheet = (name: string, worksheetId: string) =>
    workbook.tell({ name, worksheetId, address: "", changeType: "" });
  let count = 0;
  return {
    widens: true,
    async type(sheetId, row, column, typed) {
      const sheet = sheetOf(sheetId);
      fillCell(sheet, row, column, typed ?? "");
      tellEdit(workbook, sheet, one(row, column));
    },
    async addSheet(name) {
      count += 1;
      const id = `{00000000-0001-0000-0000-${String(count).padStart(12, "0")}}`;
      workbook.sheets.push({
        id,
        name,
        visibility: "Visible",
        isProtected: false,
        cells: new Map(),
        tables: [],
        merged: [],
        pictures: [],
        lists: new Map(),
      });
      tellSheet("onAdded", id);
      return id;
    },
    async deleteSheet(sheetId) {
      workbook.sheets = workbook.sheets.filter((sheet) => sheet.id !== sheetId);
      tellSheet("onDeleted", sheetId);
    },
    async formatOf(sheetId, row, column) {
      return contentAt(sheetOf(sheetId), row, column).format;
    },
    async setFormat(sheetId, row, column, numberFormat) {
      formatCell(sheetOf(sheetId), row, column, numberFormat);
    },
    async hideSheet(sheetId) {
      sheetOf(sheetId).visibility = "Hidden";
      tellSheet("onVisibilityChanged", sheetId);
    },
    async renameSheet(sheetId, name) {
      sheetOf(sheetId).name = name;
      tellSheet("onNameChanged", sheetId);
    },
    async hideRows() {
      // Excel gives and takes the cells of hidden rows like those of others, so the fake keeps no note of them.
    },
    async protectSheet(sheetId) {
      sheetOf(sheetId).isProtected = true;
      tellSheet("onProtectionChanged", sheetId);
    },
    async addTable(sheetId, name, rowIndex, columnIndex, rowCount, columnCount) {
      sheetOf(sheetId).tables.push({ name, rowIndex, columnIndex, rowCount, columnCount });
    },
    async merge(sheetId, rowIndex, columnIndex, rowCount, columnCount) {
      sheetOf(sheetId).merged.push({ rowIndex, columnIndex, rowCount, columnCount });
    },
    async addPicture(sheetId, row, column, { name, drawn, rowCount = 1 }) {
      count += 1;
      const { pictures } = sheetOf(sheetId);
      pictures.push({ id: `{shape-${count}}`, name, type: "Image", visible: true, row, column, rowCount, drawn });
    },
    async select(sheetId, row, column, rowCount, columnCount) {
      workbook.active = { sheetId, row, column, rowCount, columnCount };
    },
    async undo() {
      excel.undo();
    },
  };
}
