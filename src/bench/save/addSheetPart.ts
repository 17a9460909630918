import { strFromU8, strToU8 } from "fflate";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { addPart } from "./addPart";
import { addTableParts } from "./addTableParts";
import { changedCells } from "./changedCells";
import { columnPatch } from "./columnPatch";
import { freezePatch } from "./freezePatch";
import { filterPatch } from "./filterPatch";
import { formatPatch } from "./formatPatch";
import { insertBefore } from "./insertBefore";
import { listPatch } from "./listPatch";
import { rowPatch } from "./rowPatch";
import { mergePatch } from "./mergePatch";
import { patchCells } from "./patchCells";
import type { SavingSheet } from "./savingBook";
import { printSheetXml, type SheetXml } from "./sheetXml";
import type { StylePatch } from "./stylePatch";

const EMPTY: SheetXml = {
  prefix: "",
  before:
    '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n<worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheetFormatPr defaultRowHeight="15"/>',
  rows: [],
  after: "</worksheet>",
};

/** The parts with a sheet that was added in the grid, its tables and lists, and the workbook's relationship to it. */
export function addSheetPart(
  parts: WorkbookParts,
  sheet: SavingSheet,
  styles: StylePatch,
): { parts: WorkbookParts; relationship: string } {
  const wanted = changedCells({
    opened: new Map(),
    now: sheet.state,
    mustWrite: () => false,
    isArray: () => false,
    format: (_row, _column, before, now) => styles.formatLike(0, before, now),
  });
  const hidden = new Map([...sheet.filteredRows].map((row) => [row, { heightPoints: null, hidden: true }]));
  const filled = rowPatch(patchCells(EMPTY, wanted), hidden);
  const xml = printSheetXml({
    ...filled,
    before: columnPatch(freezePatch(filled.before, sheet.freeze, ""), sheet.columns, ""),
    after: endXml(filled.after, sheet, styles),
  });
  let number = 1;
  while (parts[`xl/worksheets/sheet${number}.xml`] !== undefined) number++;
  const path = `xl/worksheets/sheet${number}.xml`;
  const added = addPart(addTableParts(parts, path, sheet.tables), {
    path,
    content: strToU8(xml),
    contentType: "application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml",
    relationship: "http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet",
  });
  const relationships =
    strFromU8(added["xl/_rels/workbook.xml.rels"] ?? new Uint8Array()).match(/<Relationship\b[^>]*>/g) ?? [];
  const entry = relationships.find((tag) => xmlAttribute(tag, "Target") === `worksheets/sheet${number}.xml`);
  return { parts: added, relationship: xmlAttribute(entry ?? "", "Id") ?? "" };
}

/** What follows the cells of a sheet that was added, each kind at its place. */
function endXml(after: string, sheet: SavingSheet, styles: StylePatch): string {
  const merged = mergePatch(after, sheet.merges, "");
  const filtered = sheet.filter === null ? merged : filterPatch(merged, sheet.filter, "");
  const formatted = formatPatch(filtered, [], sheet.formats, styles.differential, "");
  const listed = listPatch(formatted, sheet.lists, "");
  const tables = sheet.tables.map((_, index) => `<tablePart r:id="rId${index + 1}"/>`);
  if (tables.length === 0) return listed;
  return insertBefore(listed, "tableParts", `<tableParts count="${tables.length}">${tables.join("")}</tableParts>`);
}
