import { xmlAttribute } from "../../sheet/xmlAttribute";
import { xmlEscape } from "../../sheet/xmlEscape";
import { builtInFormats } from "./builtInFormats";
import type { Look } from "./lookOfStyle";
import type { FormatStyle } from "./SavingFormat";
import { setXmlAttribute } from "./setXmlAttribute";

/** Adds looks to a file's table of styles. */
export interface StylePatch {
  /** The number of a format like the one of the number `base`, but with what of `now` differs from `before`. */
  readonly formatLike: (base: number, before: Look, now: Look) => number;
  /** The number of a look that a conditional format gives. */
  readonly differential: (style: FormatStyle) => number;
  /** The part with what was added; the same text where nothing was. */
  readonly xml: () => string;
}

const ITEM = {
  numFmts: "numFmt",
  fonts: "font",
  fills: "fill",
  borders: "border",
  cellXfs: "xf",
  dxfs: "dxf",
} as const;
type StyleList = keyof typeof ITEM;

/** The own format of a number pattern starts here (ISO/IEC 29500-1 18.8.30). */
const FIRST_OWN_FORMAT = 164;

export function stylePatch(original: string): StylePatch {
  let xml = original;
  const made = new Map<string, number>();

  const patternNumber = (pattern: string): number => {
    const builtIn = builtInFormats[pattern];
    if (builtIn !== undefined) return builtIn;
    const held = items(xml, "numFmts");
    const known = held.find((item) => xmlAttribute(item, "formatCode") === pattern);
    if (known !== undefined) return Number(xmlAttribute(known, "numFmtId"));
    const taken = held.map((item) => Number(xmlAttribute(item, "numFmtId")));
    const number = Math.max(FIRST_OWN_FORMAT - 1, ...taken) + 1;
    xml = append(xml, "numFmts", `<numFmt numFmtId="${number}" formatCode="${xmlEscape(pattern)}"/>`);
    return number;
  };

  const added = (list: StyleList, item: string): number => {
    xml = append(xml, list, item);
    return items(xml, list).length - 1;
  };

  const build = (base: number, before: Look, now: Look): number => {
    const formats = items(xml, "cellXfs");
    let format = formats[base] ?? formats[0] ?? '<xf numFmtId="0" fontId="0" fillId="0" borderId="0"/>';
    const set = (name: string, value: string) => {
      format = format.replace(/^<[^>]*>/, (tag) => setXmlAttribute(tag, name, value));
    };
    if (now.pattern !== before.pattern) {
      set("numFmtId", String(patternNumber(now.pattern)));
      set("applyNumberFormat", "1");
    }
    if (now.bold !== before.bold || now.italic !== before.italic || now.ink !== before.ink) {
      const fonts = items(xml, "fonts");
      const font = fonts[Number(xmlAttribute(format, "fontId") ?? 0)] ?? "<font/>";
      set("fontId", String(added("fonts", fontLike(font, before, now))));
      set("applyFont", "1");
    }
    if (now.background !== before.background) {
      const solid = `<patternFill patternType="solid"><fgColor rgb="FF${now.background?.slice(1)}"/><bgColor indexed="64"/></patternFill>`;
      const fill = now.background === null ? '<patternFill patternType="none"/>' : solid;
      set("fillId", String(added("fills", `<fill>${fill}</fill>`)));
      set("applyFill", "1");
    }
    if (JSON.stringify(now.lines) !== JSON.stringify(before.lines)) {
      const border = items(xml, "borders")[Number(xmlAttribute(format, "borderId") ?? 0)] ?? "<border/>";
      set("borderId", String(added("borders", borderLike(border, before, now))));
      set("applyBorder", "1");
    }
    if (now.wrap !== before.wrap || now.across !== before.across) {
      const held = /<alignment\b[^>]*>/.exec(format)?.[0] ?? "<alignment/>";
      const wrapped = setXmlAttribute(held, "wrapText", now.wrap ? "1" : null);
      const alignment = setXmlAttribute(wrapped, "horizontal", now.across);
      const inner = format
        .replace(/^<[^>]*>/, "")
        .replace(/<\/xf>$/, "")
        .replace(/<alignment\b[^>]*>/, "");
      const tag = setXmlAttribute(/^<[^>]*>/.exec(format)?.[0] ?? "<xf>", "applyAlignment", "1").replace(/\/?>$/, ">");
      format = `${tag}${alignment}${inner}</xf>`;
    }
    return added("cellXfs", format);
  };

  return {
    formatLike: (base, before, now) => {
      const key = JSON.stringify([base, before, now]);
      const known = made.get(key);
      if (known !== undefined) return known;
      const number = build(base, before, now);
      made.set(key, number);
      return number;
    },
    differential: (style) => {
      const key = `dxf ${JSON.stringify(style)}`;
      const number = made.get(key) ?? added("dxfs", differentialXml(style));
      made.set(key, number);
      return number;
    },
    xml: () => xml,
  };
}

function fontLike(font: string, before: Look, now: Look): string {
  let inner = font.replace(/^<font\b[^>]*?(?:\/>|>)/, "").replace(/<\/font>$/, "");
  if (now.ink !== before.ink) {
    inner = inner.replace(/<color\b[^>]*>/, "");
    if (now.ink !== null) inner += `<color rgb="FF${now.ink.slice(1)}"/>`;
  }
  inner = inner.replace(/<[bi]\b[^>]*\/>/g, "");
  return `<font>${now.bold ? "<b/>" : ""}${now.italic ? "<i/>" : ""}${inner}</font>`;
}

function differentialXml({ bold, ink, background }: FormatStyle): string {
  const font = (bold ? "<b/>" : "") + (ink === null ? "" : `<color rgb="FF${ink.slice(1)}"/>`);
  const fill =
    background === null ? "" : `<fill><patternFill><bgColor rgb="FF${background.slice(1)}"/></patternFill></fill>`;
  return `<dxf>${font === "" ? "" : `<font>${font}</font>`}${fill}</dxf>`;
}

/** The lines of a cell, of which those that did not change stay as the file says them. */
function borderLike(border: string, before: Look, now: Look): string {
  const sides = (["left", "right", "top", "bottom"] as const).map((side) => {
    const held = new RegExp(`<${side}\\b[^>]*?(?:/>|>[\\s\\S]*?</${side}>)`).exec(border)?.[0] ?? `<${side}/>`;
    const line = now.lines[side];
    if (line === before.lines[side]) return held;
    if (line === null) return `<${side}/>`;
    const [style = "thin", colour = "#000000"] = line.split(" ");
    return `<${side} style="${style}"><color rgb="FF${colour.slice(1)}"/></${side}>`;
  });
  const diagonal = /<diagonal\b[^>]*?(?:\/>|>[\s\S]*?<\/diagonal>)/.exec(border)?.[0] ?? "<diagonal/>";
  return `${(/^<border\b[^>]*>/.exec(border)?.[0] ?? "<border>").replace(/\s*\/?>$/, ">")}${sides.join("")}${diagonal}</border>`;
}

function listOf(xml: string, list: StyleList): RegExpExecArray | null {
  return new RegExp(`<${list}\\b[^>]*?(?:/>|>([\\s\\S]*?)</${list}>)`).exec(xml);
}

function items(xml: string, list: StyleList): string[] {
  const name = ITEM[list];
  const inner = listOf(xml, list)?.[1] ?? "";
  return inner.match(new RegExp(`<${name}\\b[^>]*?(?:/>|>[\\s\\S]*?</${name}>)`, "g")) ?? [];
}

function append(xml: string, list: StyleList, item: string): string {
  const held = listOf(xml, list);
  const before = items(xml, list);
  const whole = `<${list} count="${before.length + 1}">${before.join("")}${item}</${list}>`;
  if (held === null && list === "dxfs")
    // After the named styles (ISO/IEC 29500-1 18.8.39 fixes the order).
    return xml.replace(/<(?:tableStyles|colors|extLst)\b|<\/styleSheet>/, (next) => whole + next);
  if (held === null) return xml.replace(/(<styleSheet\b[^>]*>)/, `$1${whole}`);
  return xml.slice(0, held.index) + whole + xml.slice(held.index + held[0].length);
}
