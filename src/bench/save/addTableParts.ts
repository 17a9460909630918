import { strFromU8, strToU8 } from "fflate";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import { xmlEscape } from "../../sheet/xmlEscape";
import { filterXml } from "./filterXml";
import type { SavingTable } from "./savingBook";

const TYPES = "[Content_Types].xml";
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const TABLE_RELATION = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/table";
const TABLE_TYPE = "application/vnd.openxmlformats-officedocument.spreadsheetml.table+xml";

/** The parts with the tables of a sheet that was added, each in a part of its own (ISO/IEC 29500-1 18.5). */
export function addTableParts(parts: WorkbookParts, sheetPath: string, tables: readonly SavingTable[]): WorkbookParts {
  if (tables.length === 0) return parts;
  const added: Record<string, Uint8Array> = { ...parts };
  let id = highestId(parts);
  let relations = "";
  let types = "";
  tables.forEach((table, index) => {
    let number = 1;
    while (added[`xl/tables/table${number}.xml`] !== undefined) number += 1;
    id += 1;
    added[`xl/tables/table${number}.xml`] = strToU8(tableXml(table, id));
    relations += `<Relationship Id="rId${index + 1}" Type="${TABLE_RELATION}" Target="../tables/table${number}.xml"/>`;
    types += `<Override PartName="/xl/tables/table${number}.xml" ContentType="${TABLE_TYPE}"/>`;
  });
  const relationsPath = sheetPath.replace(/([^/]+)$/, "_rels/$1.rels");
  const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
  added[relationsPath] = strToU8(`${head}<Relationships xmlns="${RELATIONS}">${relations}</Relationships>`);
  const held = strFromU8(parts[TYPES] ?? new Uint8Array());
  added[TYPES] = strToU8(held.replace(/<\/Types>/, `${types}</Types>`));
  return added;
}

/** A table's id is its own in the whole workbook. */
function highestId(parts: WorkbookParts): number {
  const ids = Object.entries(parts)
    .filter(([path]) => /^xl\/tables\/[^/]+\.xml$/.test(path))
    .map(([, bytes]) => Number(xmlAttribute(/<(?:\w+:)?table\b[^>]*>/.exec(strFromU8(bytes))?.[0] ?? "", "id") ?? 0));
  return Math.max(0, ...ids);
}

function tableXml({ name, reference, headings, filters }: SavingTable, id: number): string {
  const columns = headings
    .map((heading, index) => `<tableColumn id="${index + 1}" name="${xmlEscape(heading)}"/>`)
    .join("");
  const called = xmlEscape(name);
  return (
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n' +
    `<table xmlns="${MAIN}" id="${id}" name="${called}" displayName="${called}" ref="${reference}" totalsRowShown="0">` +
    `${filterXml({ reference, columns: filters }, "")}<tableColumns count="${headings.length}">${columns}</tableColumns>` +
    '<tableStyleInfo name="TableStyleLight1" showFirstColumn="0" showLastColumn="0" showRowStripes="1" showColumnStripes="0"/></table>'
  );
}
