import type { ICellData, IStyleData, Nullable } from "@univerjs/core";
import { lookOfStyle, type Look } from "./lookOfStyle";

/** lookOfStyle for the cells of one sheet, each style worked out once: the same few stand in thousands of cells. */
export function lookReader(styleOf: (id: string) => Nullable<IStyleData>): (style: ICellData["s"]) => Look {
  const known = new Map<string, Look>();
  const plain = lookOfStyle(null);
  return (style) => {
    if (!style) return plain;
    if (typeof style !== "string") return lookOfStyle(style);
    let look = known.get(style);
    if (look === undefined) known.set(style, (look = lookOfStyle(styleOf(style))));
    return look;
  };
}
