import { areaOfReference } from "../../sheet/areaOfReference";
import type { SheetTable } from "../../sheet/sheetTable";
import { tokenizeFormula } from "../../sheet/tokenizeFormula";

const REFERENCE =
  /(?:('(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?(\$?[A-Z]{1,3}\$?\d+:\$?[A-Z]{1,3}\$?\d+|\$?[A-Z]{1,3}:\$?[A-Z]{1,3})(?![\w(])/giu;

/**
 * The tables that part of a formula takes whole: by the host's name, or by a reference that reaches over their headings.
 *
 * @param homeSheet The name of the sheet the formula stands on, which a reference without a sheet means.
 */
export function tablesNamed(part: string, homeSheet: string, tables: readonly SheetTable[]): readonly SheetTable[] {
  const tokens = tokenizeFormula(part);
  const named = new Set(tokens.filter(({ kind }) => kind === "name").map(({ text }) => text.toLowerCase()));
  const plain = tokens.map(({ kind, text }) => (kind === "text" || kind === "bracket" ? " " : text)).join("");
  const areas = [...plain.matchAll(REFERENCE)].flatMap(([, sheet, reference]) => {
    const area = areaOfReference(reference!);
    const name = sheet === undefined ? homeSheet : sheet.replace(/^'|'$/g, "").replace(/''/g, "'");
    return area === null ? [] : [{ ...area, sheetName: name.toLowerCase() }];
  });
  return tables.filter((table) => {
    if (table.tableName && named.has(table.tableName.toLowerCase())) return true;
    const row = table.firstRow + table.headingRow;
    const lastColumn = table.firstColumn + table.headings.length - 1;
    return areas.some(
      (area) =>
        area.sheetName === table.sheetName.toLowerCase() &&
        area.startRow <= row &&
        row <= area.endRow &&
        area.startColumn <= lastColumn &&
        table.firstColumn <= area.endColumn,
    );
  });
}
