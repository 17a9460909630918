import { cellName } from "../../sheet/cellName";
import { xmlEscape } from "../../sheet/xmlEscape";
import { xmlText } from "../../sheet/xmlText";
import { setXmlAttribute } from "./setXmlAttribute";
import type { CellXml, RowXml, SheetXml } from "./sheetXml";
import { shiftedFormula } from "./shiftedFormula";
import { shiftedIndex } from "./shiftedIndex";
import { shiftedReference } from "./shiftedReference";
import { shiftedSpan } from "./shiftedSpan";
import type { StructureEdit } from "./structureEdit";

/**
 * A sheet's part after rows or columns were put in or taken out: cells, row heights, column widths, merged blocks,
 * lists, formats and links all move. Formulas in cells are left: the grid has moved them, and they are written anew.
 */
export function shiftSheetXml(sheet: SheetXml, edit: StructureEdit, sheetName: string): SheetXml {
  const outside = (xml: string) =>
    shiftReferences(edit.axis === "column" ? shiftColumns(xml, edit) : xml, edit, sheetName);
  return {
    ...sheet,
    before: outside(sheet.before),
    rows: edit.axis === "row" ? shiftRows(sheet.rows, edit) : shiftCells(sheet.rows, edit),
    after: outside(sheet.after),
  };
}

function shiftRows(rows: readonly RowXml[], edit: StructureEdit): RowXml[] {
  return rows.flatMap((held) => {
    const row = shiftedIndex(held.row, edit);
    if (row === null) return [];
    const cells = held.cells.map((cell) => at(cell, row, cell.column));
    return [{ row, tag: setXmlAttribute(held.tag, "r", String(row + 1)), cells }];
  });
}

function shiftCells(rows: readonly RowXml[], edit: StructureEdit): RowXml[] {
  return rows.map((held) => {
    const cells = held.cells.flatMap((cell) => {
      const column = shiftedIndex(cell.column, edit);
      return column === null ? [] : [at(cell, held.row, column)];
    });
    return { ...held, tag: setXmlAttribute(held.tag, "spans", null), cells };
  });
}

function at(cell: CellXml, row: number, column: number): CellXml {
  const xml = cell.xml.replace(/^<[^>]*>/, (tag) => setXmlAttribute(tag, "r", cellName(row, column)));
  return { column, xml };
}

function shiftColumns(xml: string, edit: StructureEdit): string {
  return xml.replace(/<(?:\w+:)?col\s[^>]*>/g, (tag) => {
    const [first, last] = [/\smin="(\d+)"/.exec(tag)?.[1], /\smax="(\d+)"/.exec(tag)?.[1]].map(Number);
    const span = first === undefined || last === undefined ? null : shiftedSpan([first - 1, last - 1], edit);
    if (span === null) return "";
    return setXmlAttribute(setXmlAttribute(tag, "min", String(span[0] + 1)), "max", String(span[1] + 1));
  });
}

/** Attributes that hold references, and the formulas of lists and formats. */
function shiftReferences(xml: string, edit: StructureEdit, sheetName: string): string {
  const moved = (references: string) =>
    references
      .split(/\s+/)
      .map((reference) => shiftedReference(reference, edit))
      .filter((reference) => reference !== null)
      .join(" ");
  return xml
    .replace(
      /<(?:\w+:)?(mergeCell|hyperlink|conditionalFormatting|dataValidation|ignoredError|protectedRange)\s[^>]*>/g,
      (tag, kind) => {
        const shifted = tag.replace(
          /\s(ref|sqref)="([^"]*)"/,
          (_, name: string, held: string) => ` ${name}="${moved(held)}"`,
        );
        // Nothing is left of it; a container cannot be taken out without its end tag, so it keeps the first cell.
        if (!/\s(?:ref|sqref)=""/.test(shifted)) return shifted;
        return kind === "mergeCell" || kind === "hyperlink" ? "" : shifted.replace(/\s(ref|sqref)=""/, ' $1="A1"');
      },
    )
    .replace(/(<(?:\w+:)?(?:autoFilter|dimension)\s[^>]*?\sref=")([^"]*)"/g, (_, start: string, held: string) => {
      return `${start}${moved(held) || "A1"}"`;
    })
    .replace(/<((?:\w+:)?mergeCells)\b[^>]*>\s*<\/\1>/g, "")
    .replace(/<((?:\w+:)?hyperlinks)\b[^>]*>\s*<\/\1>/g, "")
    .replace(/<((?:\w+:)?(?:formula|formula1|formula2|f))>([^<]*)<\/\1>/g, (_, name: string, held: string) => {
      return `<${name}>${xmlEscape(shiftedFormula(xmlText(held), edit, sheetName, sheetName))}</${name}>`;
    });
}
