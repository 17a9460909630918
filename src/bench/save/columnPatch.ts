import { xmlAttribute } from "../../sheet/xmlAttribute";

/** One column of the grid: its width in pixels, and whether it is hidden. */
export interface ColumnState {
  readonly width: number;
  readonly hidden: boolean;
}

const PADDING_PIXELS = 5;
const PIXELS_A_CHARACTER = 7;

/** What stands before the cells of a sheet, with these columns; a column's own format stays with it. */
export function columnPatch(before: string, columns: ReadonlyMap<number, ColumnState>, prefix: string): string {
  const held = before.match(/<(?:\w+:)?col\s[^>]*>/g) ?? [];
  const formatOf = (column: number) => {
    const tag = held.find(
      (entry) => column + 1 >= Number(xmlAttribute(entry, "min")) && column + 1 <= Number(xmlAttribute(entry, "max")),
    );
    return tag === undefined ? undefined : xmlAttribute(tag, "style");
  };
  const entries = [...columns]
    .sort(([a], [b]) => a - b)
    .map(([column, { width, hidden }]) => {
      const characters = Math.max(0, (width - PADDING_PIXELS) / PIXELS_A_CHARACTER);
      const format = formatOf(column);
      const style = format === undefined ? "" : ` style="${format}"`;
      return `<${prefix}col min="${column + 1}" max="${column + 1}" width="${Number(characters.toFixed(4))}"${style}${hidden ? ' hidden="1"' : ""} customWidth="1"/>`;
    });
  const without = before.replace(/<(?:\w+:)?cols\b[^>]*>[\s\S]*?<\/(?:\w+:)?cols>/, "");
  return entries.length === 0 ? without : `${without}<${prefix}cols>${entries.join("")}</${prefix}cols>`;
}
