import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

const METADATA =
  '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';

/** Part of the package that holds a sheet, found by its name in the workbook. */
function sheetPart(files, name) {
  const workbook = strFromU8(files["xl/workbook.xml"]);
  const rels = strFromU8(files["xl/_rels/workbook.xml.rels"]);
  const id = new RegExp(`<sheet name="${name}"[^>]*r:id="([^"]+)"`).exec(workbook)?.[1];
  const rel = [...rels.matchAll(/<Relationship [^>]*>/g)].map((m) => m[0]).find((text) => text.includes(`Id="${id}"`));
  return `xl/${/Target="([^"]+)"/.exec(rel ?? "")?.[1]}`;
}

/** Edits one text part; a change that does not take is an error, never silently nothing. */
function edit(files, part, what, change) {
  const before = strFromU8(files[part]);
  const after = change(before);
  if (after === before) throw new Error(`${part}: no place found for ${what}`);
  files[part] = strToU8(after);
}

/** Gives a table column its own formula, which new rows then take. */
function giveColumnFormula(files, columnFormula) {
  const table = Object.keys(files).find(
    (part) => part.startsWith("xl/tables/") && strFromU8(files[part]).includes(`name="${columnFormula.table}"`),
  );
  edit(files, table, columnFormula.column, (xml) =>
    xml.replace(
      new RegExp(`(<tableColumn id="\\d+" name="${columnFormula.column}")/>`),
      `$1><calculatedColumnFormula>${columnFormula.formula}</calculatedColumnFormula></tableColumn>`,
    ),
  );
}

/**
 * Marks spilling formulas as dynamic arrays in a written workbook and gives a table column its own
 * formula for new rows: the writing library has neither, and without them Excel shows the formula with @.
 */
export function markDynamicArrays(bytes, spills, columnFormula = null) {
  const files = unzipSync(bytes);
  for (const { sheet, address } of spills)
    edit(files, sheetPart(files, sheet), address, (xml) =>
      xml.replace(
        new RegExp(`<c r="${address}"([^>]*)><f>`),
        `<c r="${address}"$1 cm="1"><f t="array" ref="${address}">`,
      ),
    );
  if (columnFormula !== null) giveColumnFormula(files, columnFormula);
  files["xl/metadata.xml"] = strToU8(METADATA);
  edit(files, "[Content_Types].xml", "metadata", (xml) =>
    xml.replace(
      "</Types>",
      '<Override PartName="/xl/metadata.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"/></Types>',
    ),
  );
  edit(files, "xl/_rels/workbook.xml.rels", "metadata", (xml) =>
    xml.replace(
      "</Relationships>",
      '<Relationship Id="rIdMetadata" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sheetMetadata" Target="metadata.xml"/></Relationships>',
    ),
  );
  edit(files, "xl/workbook.xml", "calculation on loading", (xml) =>
    xml.replace(/<calcPr [^>]*\/>/, '<calcPr calcId="191029" fullCalcOnLoad="1"/>'),
  );
  // A fixed time of writing, so that the same scenario gives the same bytes.
  return zipSync(files, { mtime: new Date(Date.UTC(2026, 0, 1)), level: 9 });
}
