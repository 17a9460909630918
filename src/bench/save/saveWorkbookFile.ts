import { strFromU8, strToU8, zipSync, type Zippable } from "fflate";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import type { OpenedFile } from "../file/openWorkbookFile";
import type { OpenedFilters } from "../file/OpenedFilters";
import { resourceOf } from "../file/resourceOf";
import { relationshipsOf } from "../file/relationshipsOf";
import type { WorkbookParts } from "../file/unpackWorkbook";
import { addSheetPart } from "./addSheetPart";
import { bookPatch, type ListedSheet } from "./bookPatch";
import { drawingPatch } from "./drawingPatch";
import { dynamicArrayParts } from "./dynamicArrayParts";
import { formatsOf, type GridFormat } from "./formatsOf";
import { mapFormulaElements } from "./mapFormulaElements";
import { removePart } from "./removePart";
import { renamedFormula } from "./renamedFormula";
import { savedSheetXml } from "./savedSheetXml";
import type { SavingBook } from "./savingBook";
import { shiftedFormula } from "./shiftedFormula";
import { stylePatch } from "./stylePatch";
import { tablePatch } from "./tablePatch";
import { writeKeptPart } from "./writeKeptPart";

const BOOK = "xl/workbook.xml";
const STYLES = "xl/styles.xml";

/** How hard to pack: 6 for a file to keep, 1 for a copy made while somebody works. */
type Packing = 1 | 6;

const NO_FILTERS: OpenedFilters = { filter: null, ofTables: new Map(), rows: new Set() };

/**
 * The workbook's file with all that changed in the grid since it was opened. Only the parts that changed are written
 * anew, and in a sheet only the cells that changed: what the bench does not know stays as it was.
 */
export function saveWorkbookFile(file: OpenedFile, now: SavingBook, packing: Packing = 6): Uint8Array {
  let parts: WorkbookParts = { ...file.parts };
  const text = (path: string) => strFromU8(parts[path] ?? new Uint8Array());
  const write = (path: string, xml: string) => {
    if (xml !== text(path)) parts = { ...parts, [path]: strToU8(xml) };
  };
  const styles = stylePatch(text(STYLES));
  const formats = resourceOf<GridFormat[]>(file.data, "SHEET_CONDITIONAL_FORMATTING_PLUGIN");
  const listed: ListedSheet[] = [];
  const kept = new Set<string>();
  for (const sheet of now.sheets) {
    const book = file.book.sheets.find(({ sheetId }) => sheetId === sheet.sheetId);
    if (book === undefined || book.path === null) {
      const added = addSheetPart(parts, sheet, styles);
      parts = added.parts;
      listed.push({ relationship: added.relationship, name: sheet.name, hidden: sheet.hidden });
      continue;
    }
    const data = file.data.sheets[book.sheetId] ?? {};
    const opened = {
      book,
      xml: text(book.path),
      data,
      styles: file.data.styles,
      formats: formatsOf(formats[book.sheetId] ?? []),
      filters: file.filters.get(book.sheetId) ?? NO_FILTERS,
    };
    write(book.path, savedSheetXml(opened, sheet, now.structure, styles));
    const edits = now.structure.filter(({ sheetId }) => sheetId === book.sheetId);
    for (const target of edits.length === 0 ? [] : relationshipsOf(parts, book.path).values()) {
      if (/(?:^|\/)drawings\/[^/]+\.xml$/.test(target)) write(target, drawingPatch(text(target), edits));
    }
    kept.add(book.relationship);
    listed.push({ relationship: book.relationship, name: sheet.name, hidden: sheet.hidden });
  }
  for (const book of file.book.sheets) {
    if (book.path === null)
      listed.push({ relationship: book.relationship, name: book.name, hidden: book.state !== "visible" });
    else if (!kept.has(book.relationship)) parts = removePart(parts, book.path);
  }
  write(STYLES, styles.xml());
  parts = writeKeptPart(patchTables(parts, file, now), now.kept);
  parts = patchFormulas(parts, file, now);
  if (!isChanged(parts, file, listed)) return zipped(file.parts, packing);
  parts = { ...parts, [BOOK]: strToU8(bookPatch(strFromU8(parts[BOOK] ?? new Uint8Array()), listed, now.activeSheet)) };
  // The order of calculation names cells that may hold no formula any more; Excel makes it anew.
  parts = removePart(parts, "xl/calcChain.xml");
  const spills = Object.keys(parts).some(
    (path) => path.startsWith("xl/worksheets/") && strFromU8(parts[path] ?? new Uint8Array()).includes(' cm="1"'),
  );
  return zipped(spills ? dynamicArrayParts(parts) : parts, packing);
}

function isChanged(parts: WorkbookParts, file: OpenedFile, listed: readonly ListedSheet[]): boolean {
  const paths = Object.keys(parts);
  if (paths.length !== Object.keys(file.parts).length || paths.some((path) => parts[path] !== file.parts[path]))
    return true;
  const before = file.book.sheets.map(({ relationship, name, state }) => [relationship, name, state !== "visible"]);
  return (
    JSON.stringify(before) !==
    JSON.stringify(listed.map(({ relationship, name, hidden }) => [relationship, name, hidden]))
  );
}

function patchTables(parts: WorkbookParts, file: OpenedFile, now: SavingBook): WorkbookParts {
  const opened = new Map([...file.filters.values()].flatMap(({ ofTables }) => [...ofTables]));
  const tables = new Map(now.sheets.flatMap((sheet) => sheet.tables.map((table) => [table.name.toLowerCase(), table])));
  const patched = { ...parts };
  for (const [path, bytes] of Object.entries(parts)) {
    if (!/^xl\/tables\/[^/]+\.xml$/.test(path)) continue;
    const xml = strFromU8(bytes);
    const name = xmlAttribute(/<table\b[^>]*>/.exec(xml)?.[0] ?? "", "displayName") ?? "";
    const table = tables.get(name.toLowerCase());
    const saved = table === undefined ? xml : tablePatch(xml, table, opened.get(table.name) ?? []);
    if (saved !== xml) patched[path] = strToU8(saved);
  }
  return patched;
}

/** Formulas outside of cells follow rows that moved and sheets that were renamed; the grid moves those inside. */
function patchFormulas(parts: WorkbookParts, file: OpenedFile, now: SavingBook): WorkbookParts {
  const nameOf = new Map(file.book.sheets.map(({ sheetId, name }) => [sheetId, name]));
  const renamed = new Map<string, string>();
  for (const { sheetId, name } of now.sheets) {
    const old = nameOf.get(sheetId);
    if (old !== undefined && old !== name) renamed.set(old.toLowerCase(), name);
  }
  if (renamed.size === 0 && now.structure.length === 0) return parts;
  const ownName = new Map(file.book.sheets.map(({ path, name }) => [path, name]));
  const patched = { ...parts };
  for (const [path, bytes] of Object.entries(parts)) {
    if (!path.startsWith("xl/") || !path.endsWith(".xml")) continue;
    const xml = strFromU8(bytes);
    const own = ownName.get(path) ?? "";
    const saved = mapFormulaElements(xml, (formula) => {
      const shifted = now.structure.reduce((held, edit) => {
        const edited = nameOf.get(edit.sheetId);
        // A sheet's own formulas were moved together with its cells.
        return edited === undefined || edited === own ? held : shiftedFormula(held, edit, own, edited);
      }, formula);
      return renamedFormula(shifted, renamed);
    });
    if (saved !== xml) patched[path] = strToU8(saved);
  }
  return patched;
}

function zipped(parts: WorkbookParts, level: Packing): Uint8Array {
  const entries: Zippable = {};
  for (const [path, bytes] of Object.entries(parts)) entries[path] = [bytes, { level }];
  return zipSync(entries);
}
