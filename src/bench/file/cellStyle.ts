import type { Cell as FileCell } from "@cj-tech-master/excelts";
import {
  BooleanNumber,
  HorizontalAlign,
  VerticalAlign,
  WrapStrategy,
  type IBorderData,
  type IStyleData,
} from "@univerjs/core";
import { borderStyles } from "./borderStyles";

const HORIZONTAL: Readonly<Record<string, HorizontalAlign>> = {
  left: HorizontalAlign.LEFT,
  center: HorizontalAlign.CENTER,
  right: HorizontalAlign.RIGHT,
};
const VERTICAL: Readonly<Record<string, VerticalAlign>> = {
  top: VerticalAlign.TOP,
  middle: VerticalAlign.MIDDLE,
  bottom: VerticalAlign.BOTTOM,
};

const SIDES = [
  ["top", "t"],
  ["bottom", "b"],
  ["left", "l"],
  ["right", "r"],
] as const;

/** How a cell of the file looks, as far as the bench shows it; the file keeps the rest. */
export function cellStyle({ numFmt, font, fill, alignment, border }: FileCell): IStyleData {
  const style: IStyleData = {};
  const lines: IBorderData = {};
  for (const [side, key] of SIDES) {
    const line = border?.[side];
    const kind = borderStyles[line?.style ?? ""];
    if (kind !== undefined) lines[key] = { s: kind, cl: { rgb: rgb(line?.color?.argb) ?? "#000000" } };
  }
  if (Object.keys(lines).length > 0) style.bd = lines;
  if (typeof numFmt === "string" && numFmt !== "General") style.n = { pattern: numFmt };
  if (font?.bold === true) style.bl = BooleanNumber.TRUE;
  if (font?.italic === true) style.it = BooleanNumber.TRUE;
  if (font?.size !== undefined && font.size !== 11) style.fs = font.size;
  const ink = rgb(font?.color?.argb);
  if (ink !== undefined) style.cl = { rgb: ink };
  if (fill?.type === "pattern" && fill.pattern === "solid") {
    const background = rgb(fill.fgColor?.argb);
    if (background !== undefined) style.bg = { rgb: background };
  }
  if (alignment?.wrapText === true) style.tb = WrapStrategy.WRAP;
  const across = HORIZONTAL[alignment?.horizontal ?? ""];
  if (across !== undefined) style.ht = across;
  const down = VERTICAL[alignment?.vertical ?? ""];
  if (down !== undefined) style.vt = down;
  return style;
}

function rgb(argb: string | undefined): string | undefined {
  return argb === undefined ? undefined : `#${argb.slice(-6)}`;
}
