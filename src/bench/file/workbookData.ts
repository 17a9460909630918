import type { Workbook } from "@cj-tech-master/excelts";
import { LocaleType, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import { conditionalFormatResource } from "./conditionalFormatResource";
import type { Book } from "./readBook";
import { sheetData } from "./sheetData";
import { styleTable } from "./styleTable";
import { tableResource } from "./tableResource";
import { validationResource } from "./validationResource";

/**
 * The whole workbook as the grid's engine takes it. Tables, names, lists and formats go in with it and not after it,
 * so that the very first calculation finds them and none of it can be undone by the user.
 */
export function workbookData(workbook: Workbook, book: Book, name: string, unitId: string): IWorkbookData {
  const styles = styleTable();
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  const tables: Record<string, unknown> = {};
  const validations: Record<string, unknown> = {};
  const formats: Record<string, unknown> = {};
  for (const sheet of book.sheets) {
    const worksheet = workbook.getWorksheet(sheet.name);
    if (worksheet === undefined) continue;
    sheets[sheet.sheetId] = sheetData(worksheet, sheet, book.dateSystem, styles);
    const sheetTables = tableResource(worksheet);
    if (sheetTables !== null) tables[sheet.sheetId] = sheetTables;
    validations[sheet.sheetId] = validationResource(worksheet);
    formats[sheet.sheetId] = conditionalFormatResource(worksheet);
  }
  return {
    id: unitId,
    name,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles: styles.styles(),
    defaultStyle: { ff: "Calibri", fs: 11 },
    sheetOrder: book.sheets.map((sheet) => sheet.sheetId).filter((id) => sheets[id] !== undefined),
    sheets,
    resources: [
      resource("SHEET_TABLE_PLUGIN", tables),
      resource("SHEET_DATA_VALIDATION_PLUGIN", validations),
      resource("SHEET_CONDITIONAL_FORMATTING_PLUGIN", formats),
      resource("SHEET_DEFINED_NAME_PLUGIN", names(book)),
    ],
  };
}

function resource(name: string, data: unknown): { name: string; data: string } {
  return { name, data: JSON.stringify(data) };
}

function names(book: Book): Record<string, unknown> {
  const byId: Record<string, unknown> = {};
  book.names.forEach(({ name, refersTo, hidden, sheetPosition }, index) => {
    // Names the file format keeps for itself (print areas, filters) mean nothing to the engine.
    if (name.startsWith("_xlnm.")) return;
    const id = `name-${index}`;
    const sheet = sheetPosition === null ? undefined : book.sheets[sheetPosition]?.sheetId;
    byId[id] = {
      id,
      name,
      formulaOrRefString: /^[^"(]*![^"(]*$/.test(refersTo) ? refersTo : `=${refersTo}`,
      localSheetId: sheet ?? "AllDefaultWorkbook",
      hidden,
    };
  });
  return byId;
}
