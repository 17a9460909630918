import {
  BooleanNumber,
  HorizontalAlign,
  WrapStrategy,
  type IBorderStyleData,
  type IStyleData,
  type Nullable,
} from "@univerjs/core";
import { borderStyles } from "../file/borderStyles";

/** What of a cell's look the bench shows and saves. */
export interface Look {
  readonly pattern: string;
  readonly bold: boolean;
  readonly italic: boolean;
  /** "#RRGGBB", or null for the plain one. */
  readonly ink: string | null;
  readonly background: string | null;
  readonly wrap: boolean;
  readonly across: "left" | "center" | "right" | null;
  /** The lines around it, each as "thin #RRGGBB", or null for none. */
  readonly lines: Readonly<Record<"left" | "right" | "top" | "bottom", string | null>>;
}

export function lookOfStyle(style: Nullable<IStyleData>): Look {
  const across = style?.ht === HorizontalAlign.LEFT ? "left" : style?.ht === HorizontalAlign.CENTER ? "center" : null;
  return {
    pattern: style?.n?.pattern ?? "General",
    bold: style?.bl === BooleanNumber.TRUE,
    italic: style?.it === BooleanNumber.TRUE,
    ink: sixDigits(style?.cl?.rgb),
    background: sixDigits(style?.bg?.rgb),
    wrap: style?.tb === WrapStrategy.WRAP,
    across: style?.ht === HorizontalAlign.RIGHT ? "right" : across,
    lines: {
      left: lineOf(style?.bd?.l),
      right: lineOf(style?.bd?.r),
      top: lineOf(style?.bd?.t),
      bottom: lineOf(style?.bd?.b),
    },
  };
}

const LINE_NAMES = new Map(Object.entries(borderStyles).map(([name, kind]) => [kind, name]));

function lineOf(line: Nullable<IBorderStyleData>): string | null {
  const name = line ? LINE_NAMES.get(line.s) : undefined;
  return name === undefined ? null : `${name} ${sixDigits(line?.cl.rgb) ?? "#000000"}`;
}

/** "#abc", "rgb(1,2,3)" and "#AABBCC" in one form. */
function sixDigits(colour: Nullable<string>): string | null {
  if (!colour) return null;
  const parts = /^rgba?\((\d+),\s*(\d+),\s*(\d+)/.exec(colour);
  if (parts !== null)
    return `#${parts
      .slice(1, 4)
      .map((part) => Number(part).toString(16).padStart(2, "0"))
      .join("")}`.toUpperCase();
  const digits = colour.replace("#", "");
  const long = digits.length === 3 ? [...digits].map((digit) => digit + digit).join("") : digits;
  return /^[0-9a-f]{6}$/i.test(long) ? `#${long.toUpperCase()}` : null;
}
