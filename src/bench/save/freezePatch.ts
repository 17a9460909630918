import { cellName } from "../../sheet/cellName";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import { setXmlAttribute } from "./setXmlAttribute";

/** How many rows and columns stay in sight; 0 where none do. */
export interface Freeze {
  readonly rows: number;
  readonly columns: number;
}

/**
 * What stands before the cells of a sheet, with these rows and columns frozen (ISO/IEC 29500-1 18.3.1.66); the very same
 * text where they are frozen already.
 */
export function freezePatch(before: string, freeze: Freeze, prefix: string): string {
  const held = frozenIn(before);
  if (held.rows === freeze.rows && held.columns === freeze.columns) return before;
  const pane = paneXml(freeze, prefix);
  const view = new RegExp(`<${prefix}sheetView\\b[^>]*?(?:/>|>([\\s\\S]*?)</${prefix}sheetView>)`).exec(before);
  if (view === null) {
    const views = `<${prefix}sheetViews><${prefix}sheetView workbookViewId="0">${pane}</${prefix}sheetView></${prefix}sheetViews>`;
    // After what describes the sheet, before how it is laid out (18.3.1.99 fixes the order).
    const next = new RegExp(`<${prefix}(?:sheetFormatPr|cols)\\b`).exec(before)?.index ?? before.length;
    return before.slice(0, next) + views + before.slice(next);
  }
  const tag = setXmlAttribute(/^<[^>]*>/.exec(view[0])?.[0] ?? "", "topLeftCell", null).replace(/\s*\/?>$/, ">");
  // Selections belong to panes that may be gone; Excel makes its own where a file says none.
  const rest = (view[1] ?? "")
    .replace(new RegExp(`<${prefix}pane\\b[^>]*?(?:/>|></${prefix}pane>)`, "g"), "")
    .replace(new RegExp(`<${prefix}selection\\b[^>]*?(?:/>|></${prefix}selection>)`, "g"), "");
  const whole = `${tag}${pane}${rest}</${prefix}sheetView>`;
  return before.slice(0, view.index) + whole + before.slice(view.index + view[0].length);
}

function frozenIn(before: string): Freeze {
  const pane = /<(?:\w+:)?pane\b[^>]*>/.exec(before)?.[0] ?? "";
  if (!/^frozen/.test(xmlAttribute(pane, "state") ?? "")) return { rows: 0, columns: 0 };
  return { rows: Number(xmlAttribute(pane, "ySplit") ?? 0), columns: Number(xmlAttribute(pane, "xSplit") ?? 0) };
}

function paneXml({ rows, columns }: Freeze, prefix: string): string {
  if (rows === 0 && columns === 0) return "";
  const active = rows > 0 && columns > 0 ? "bottomRight" : rows > 0 ? "bottomLeft" : "topRight";
  const split = (columns > 0 ? ` xSplit="${columns}"` : "") + (rows > 0 ? ` ySplit="${rows}"` : "");
  return `<${prefix}pane${split} topLeftCell="${cellName(rows, columns)}" activePane="${active}" state="frozen"/>`;
}
