import { areaOfReference } from "../../sheet/areaOfReference";
import { xmlAttribute } from "../../sheet/xmlAttribute";

/** One cell of a sheet's part; `xml` is its whole element as it stands. */
export interface CellXml {
  readonly column: number;
  readonly xml: string;
}

/** One row; `tag` is its start tag, without the slash of an empty one. */
export interface RowXml {
  readonly row: number;
  readonly tag: string;
  readonly cells: readonly CellXml[];
}

/** A sheet's part cut open at its cells; what stands before and after is kept as it is. */
export interface SheetXml {
  /** The namespace prefix with its colon, "" as a rule. */
  readonly prefix: string;
  readonly before: string;
  readonly rows: readonly RowXml[];
  readonly after: string;
}

/** Cuts a sheet's part open, or null where it holds no sheetData. */
export function parseSheetXml(xml: string): SheetXml | null {
  const found = /<(\w+:)?sheetData\b[^>]*?(?:\/>|>([\s\S]*?)<\/(?:\w+:)?sheetData>)/.exec(xml);
  if (found === null) return null;
  const [whole, prefix = "", inner = ""] = found;
  return {
    prefix,
    before: xml.slice(0, found.index),
    rows: parseRows(inner, prefix),
    after: xml.slice(found.index + whole.length),
  };
}

function parseRows(inner: string, prefix: string): RowXml[] {
  const rows: RowXml[] = [];
  let row = -1;
  for (const { tag, content } of elements(inner, `${prefix}row`)) {
    row = Number(xmlAttribute(tag, "r") ?? row + 2) - 1;
    let column = -1;
    const cells = elements(content, `${prefix}c`).map((cell): CellXml => {
      const reference = xmlAttribute(cell.tag, "r");
      column = reference === undefined ? column + 1 : (areaOfReference(reference)?.startColumn ?? column + 1);
      return { column, xml: cell.whole };
    });
    rows.push({ row, tag, cells });
  }
  return rows;
}

interface Element {
  readonly whole: string;
  readonly tag: string;
  readonly content: string;
}

/** The elements of one name that follow one another; they do not hold one another in a sheet. */
function elements(xml: string, name: string): Element[] {
  const pattern = new RegExp(`<${name}(\\s[^>]*?)?(?:/>|>([\\s\\S]*?)</${name}>)`, "g");
  return [...xml.matchAll(pattern)].map(([whole, attributes = "", content = ""]) => ({
    whole,
    tag: `<${name}${attributes}>`,
    content,
  }));
}

/** The part put together again; a cell that nobody touched comes back byte for byte. */
export function printSheetXml({ prefix, before, rows, after }: SheetXml): string {
  const lines = rows.map(({ tag, cells }) => {
    if (cells.length === 0) return `${tag.slice(0, -1)}/>`;
    return `${tag}${cells.map(({ xml }) => xml).join("")}</${prefix}row>`;
  });
  return `${before}<${prefix}sheetData>${lines.join("")}</${prefix}sheetData>${after}`;
}
