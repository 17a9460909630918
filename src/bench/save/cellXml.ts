import { cellName } from "../../sheet/cellName";
import { xmlEscape } from "../../sheet/xmlEscape";
import { cellText } from "./cellText";
import type { WantedCell } from "./wantedCell";

/**
 * A cell as the file keeps it (ISO/IEC 29500-1 18.3.1.4). Text stands in the cell itself, so that the table of shared
 * texts stays as it is; a formula that spills carries cm="1", without which Excel would show one cell of it with @.
 */
export function cellXml(
  { row, column, value, formula, spill }: WantedCell,
  prefix: string,
  format: string | undefined,
): string {
  const attributes = ` r="${cellName(row, column)}"${format === undefined ? "" : ` s="${format}"`}`;
  const name = `${prefix}c`;
  if (formula === null) {
    if (value === null) return `<${name}${attributes}/>`;
    if (typeof value === "string") {
      return `<${name}${attributes} t="inlineStr"><${prefix}is><${prefix}t xml:space="preserve">${cellText(value)}</${prefix}t></${prefix}is></${name}>`;
    }
  }
  const array = spill === null ? "" : ` t="array" ref="${spill}"`;
  const f = formula === null ? "" : `<${prefix}f${array}>${xmlEscape(formula)}</${prefix}f>`;
  const [type, text] = result(value);
  const v = text === null ? "" : `<${prefix}v>${cellText(text)}</${prefix}v>`;
  const dynamic = spill === null ? "" : ' cm="1"';
  return `<${name}${attributes}${type === "n" ? "" : ` t="${type}"`}${dynamic}>${f}${v}</${name}>`;
}

function result(value: WantedCell["value"]): readonly ["n" | "b" | "e" | "str", string | null] {
  if (value === null) return ["str", ""];
  if (typeof value === "number") return ["n", String(value)];
  if (typeof value === "boolean") return ["b", value ? "1" : "0"];
  return typeof value === "string" ? ["str", value] : ["e", value.error];
}
