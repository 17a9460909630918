import type { ColumnChoices } from "../../sheet/columnChoices";
import { columnsText } from "../../sheet/columnsText";
import { readClosedDaysFound } from "../../sheet/readClosedDaysFound";
import { readCrewFound } from "../../sheet/readCrewFound";
import { choicesFor } from "../columns/choicesFor";
import type { ReadTables } from "../state/ReadTables";
import { argumentOptions } from "./argumentOptions";
import type { FunctionDoc, ParamDoc } from "./FunctionDoc";

const KIND = /^The (pieces|looks|stops|requests|receipts|shoes|lenders)\b/;
const DAYS: ReadonlySet<string> = new Set(["asOf", "onDate"]);

/**
 * What to begin with, by argument: the largest table of the kind it takes, the sheet's own day, the people and the closed
 * days where the workbook has them, and the columns chosen by hand. What cannot be told is left blank.
 */
export function suggestedArguments(
  { params }: FunctionDoc,
  read: ReadTables,
  columns: ColumnChoices,
): Readonly<Record<string, string>> {
  const begun: Record<string, string> = {};
  for (const param of params) {
    const text = textFor(param, read);
    if (text !== null) begun[param.name] = text;
  }
  const rows = params.find(({ matrix }) => matrix);
  const table = rows === undefined ? undefined : tableFor(rows, read);
  if (table !== undefined && params.some(({ name }) => name === "columns")) {
    const { text } = columnsText(choicesFor(table, columns));
    if (text !== "") begun.columns = text;
  }
  return begun;
}

function tableFor(param: ParamDoc, read: ReadTables) {
  const kind = KIND.exec(param.text)?.[1];
  return read.tables
    .filter((table) => table.kind === kind)
    .reduce<ReadTables["tables"][number] | undefined>(
      (best, table) => (best === undefined || table.dataRows.length > best.dataRows.length ? table : best),
      undefined,
    );
}

function textFor(param: ParamDoc, read: ReadTables): string | null {
  if (DAYS.has(param.name)) return argumentOptions(param, read)[0]?.text ?? null;
  if (!param.matrix) return null;
  const table = tableFor(param, read);
  if (table !== undefined) {
    const options = argumentOptions(param, read);
    if (table.tableName) return `=${table.tableName}[#All]`;
    return options.find(({ label }) => label.startsWith(`${table.sheetName}: `))?.text ?? null;
  }
  if (param.name === "people") return namedAt(readCrewFound(read.workbook.sheets).place?.at, read);
  if (param.name === "closed") {
    const place = readClosedDaysFound(read.workbook.sheets).place;
    return place === null ? null : `=${place.reference}`;
  }
  return null;
}

/** The host's table whose heading row a cell stands in. */
function namedAt(
  at: { readonly sheetId: string; readonly row: number; readonly column: number } | undefined,
  read: ReadTables,
): string | null {
  const sheet = read.workbook.sheets.find(({ sheetId }) => sheetId === at?.sheetId);
  const table = sheet?.tables.find(
    ({ row, column, columnCount }) =>
      at !== undefined && row === at.row && column <= at.column && at.column < column + columnCount,
  );
  return table === undefined ? null : `=${table.name}[#All]`;
}
