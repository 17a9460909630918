import { setXmlAttribute } from "./setXmlAttribute";
import type { SheetXml } from "./sheetXml";

/** One row of the grid that differs from the file: its height in points, or null for the usual one. */
export interface RowState {
  readonly heightPoints: number | null;
  readonly hidden: boolean;
}

/** A sheet's part with these rows made so high, shown or hidden. */
export function rowPatch(sheet: SheetXml, states: ReadonlyMap<number, RowState>): SheetXml {
  const rows = [...sheet.rows];
  for (const [row, { heightPoints, hidden }] of states) {
    const index = rows.findIndex((held) => held.row === row);
    const held = rows[index] ?? { row, tag: `<${sheet.prefix}row r="${row + 1}">`, cells: [] };
    let tag = setXmlAttribute(held.tag, "ht", heightPoints === null ? null : String(heightPoints));
    tag = setXmlAttribute(tag, "customHeight", heightPoints === null ? null : "1");
    tag = setXmlAttribute(tag, "hidden", hidden ? "1" : null);
    if (index < 0) rows.push({ ...held, tag });
    else rows[index] = { ...held, tag };
  }
  rows.sort((a, b) => a.row - b.row);
  return { ...sheet, rows };
}
