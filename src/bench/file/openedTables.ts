import type { IWorkbookData } from "@univerjs/core";
import type { Area } from "../../sheet/areaOfReference";
import type { TableArea } from "../../sheet/sheetSnapshot";

interface KeptTables {
  readonly tables: readonly { readonly name: string; readonly range: Area }[];
}

/** The tables of a workbook that is not laid out yet, by sheet, heading rows included. */
export function openedTables({ resources }: IWorkbookData): Readonly<Record<string, readonly TableArea[]>> {
  const text = resources?.find(({ name }) => name === "SHEET_TABLE_PLUGIN")?.data ?? "{}";
  const bySheet = Object.entries(JSON.parse(text) as Record<string, KeptTables>);
  return Object.fromEntries(
    bySheet.map(([sheetId, { tables }]) => [
      sheetId,
      tables.map(({ name, range: { startRow, startColumn, endRow, endColumn } }) => ({
        name,
        row: startRow,
        column: startColumn,
        rowCount: endRow - startRow + 1,
        columnCount: endColumn - startColumn + 1,
      })),
    ]),
  );
}
