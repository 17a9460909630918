import { xmlAttribute } from "../../sheet/xmlAttribute";
import { cellXml } from "./cellXml";
import type { CellXml, RowXml, SheetXml } from "./sheetXml";
import type { WantedCell } from "./wantedCell";

/** A sheet's part with these cells set; every other cell, and every row's own attributes, stay byte for byte. */
export function patchCells(sheet: SheetXml, wanted: readonly WantedCell[]): SheetXml {
  const byRow = new Map<number, Map<number, WantedCell>>();
  for (const cell of wanted) {
    const line = byRow.get(cell.row) ?? new Map<number, WantedCell>();
    byRow.set(cell.row, line.set(cell.column, cell));
  }
  const rows = sheet.rows.map((held): RowXml => {
    const line = byRow.get(held.row);
    byRow.delete(held.row);
    return line === undefined ? held : patchRow(held, line, sheet.prefix);
  });
  for (const [row, line] of byRow) {
    rows.push(patchRow({ row, tag: `<${sheet.prefix}row r="${row + 1}">`, cells: [] }, line, sheet.prefix));
  }
  rows.sort((a, b) => a.row - b.row);
  return { ...sheet, rows };
}

function patchRow(held: RowXml, line: ReadonlyMap<number, WantedCell>, prefix: string): RowXml {
  const untouched = held.cells.filter(({ column }) => !line.has(column));
  const set = [...line.values()].flatMap((cell): CellXml[] => {
    const old = held.cells.find(({ column }) => column === cell.column);
    const oldFormat = old === undefined ? undefined : xmlAttribute(/^<[^>]*>/.exec(old.xml)?.[0] ?? "", "s");
    const format = cell.format === null ? oldFormat : String(cell.format);
    // A cell that holds nothing and has no format of its own need not be there.
    if (cell.value === null && cell.formula === null && format === undefined) return [];
    return [{ column: cell.column, xml: cellXml(cell, prefix, format) }];
  });
  const cells = [...untouched, ...set].sort((a, b) => a.column - b.column);
  return { ...held, tag: held.tag.replace(/\sspans="[^"]*"/, ""), cells };
}
