import type { SheetTable } from "../../sheet/sheetTable";
import type { SheetSnapshot, TableArea } from "../../sheet/sheetSnapshot";
import { sayTableRows } from "../sayTableRows";
import type { ReadTables } from "../state/ReadTables";
import { sheetDay } from "../today/sheetDay";
import { areaReference } from "./areaReference";
import type { ArgumentOption } from "./ArgumentOption";
import type { ParamDoc } from "./FunctionDoc";
import { structuredReference } from "../../sheet/structuredReference";

/** What the workbook offers for an argument: tables and columns for a range, for a single value the cells of the own row and the day. */
export function argumentOptions(param: ParamDoc, read: ReadTables): readonly ArgumentOption[] {
  if (param.name === "columns") return [];
  const named = read.workbook.sheets.flatMap((sheet) => sheet.tables.map((table) => ({ sheet, table })));
  if (!param.matrix) {
    const rows = named.flatMap(({ sheet, table }) =>
      headingsOf(sheet, table).map((heading) => ({
        group: `${table.name}, in the row of the formula`,
        label: heading,
        text: `=${structuredReference(table.name, heading, true)}`,
      })),
    );
    return [...dayOptions(read), ...rows];
  }
  const tables = named.map(({ sheet, table }) => {
    const known = read.tables.find((one) => one.sheetId === sheet.sheetId && one.tableName === table.name);
    const rows = known === undefined ? `${table.rowCount - 1} rows` : sayTableRows([known]);
    return { group: "Whole tables", label: `${table.name}: ${rows}`, text: `=${table.name}[#All]` };
  });
  const areas = read.tables.filter((table) => !table.tableName).map(areaOption);
  const columns = named.flatMap(({ sheet, table }) =>
    headingsOf(sheet, table).map((heading) => ({
      group: `${table.name}, one column`,
      label: heading,
      text: `=${structuredReference(table.name, heading, false)}`,
    })),
  );
  return [...tables, ...areas, ...columns];
}

function areaOption(table: SheetTable): ArgumentOption {
  return {
    group: "Whole tables",
    label: `${table.sheetName}: ${sayTableRows([table])}`,
    text: `=${tableReference(table)}`,
  };
}

function tableReference({ sheetName, firstRow, firstColumn, headingRow, headings, cells }: SheetTable): string {
  const row = firstRow + headingRow;
  const rowCount = cells.length - headingRow;
  return areaReference(sheetName, { row, column: firstColumn, rowCount, columnCount: headings.length });
}

function dayOptions(read: ReadTables): readonly ArgumentOption[] {
  const own = sheetDay(read.workbook);
  const today = { group: "A day", label: "Today, whatever day it is", text: "=TODAY()" };
  if (own === null) return [today];
  const { row, column } = own.at;
  const text = `=${areaReference(own.sheetName, { row, column, rowCount: 1, columnCount: 1 })}`;
  return [{ group: "A day", label: "The day the sheet counts for", text }, today];
}

function headingsOf(sheet: SheetSnapshot, { row, column, columnCount }: TableArea): readonly string[] {
  const from = column - sheet.firstColumn;
  const cells = sheet.values[row - sheet.firstRow]?.slice(from, from + columnCount) ?? [];
  return cells.flatMap((cell) => (typeof cell === "string" && cell.trim() !== "" ? [cell] : []));
}
