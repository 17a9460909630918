import { strFromU8 } from "fflate";
import type { WorkbookParts } from "./unpackWorkbook";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import { xmlText } from "../../sheet/xmlText";

/** One sheet of the book as xl/workbook.xml lists it. */
export interface BookSheet {
  readonly name: string;
  readonly sheetId: string;
  readonly state: "visible" | "hidden" | "veryHidden";
  /** The workbook's relationship to its part. */
  readonly relationship: string;
  /** The part that holds its cells; null for a sheet that is a chart, which stays in the file as it is. */
  readonly path: string | null;
  readonly isProtected: boolean;
}

interface BookName {
  readonly name: string;
  readonly refersTo: string;
  readonly hidden: boolean;
  /** The position of the one sheet it belongs to, or null for the whole workbook. */
  readonly sheetPosition: number | null;
}

/** What stands in xl/workbook.xml itself. */
export interface Book {
  readonly sheets: readonly BookSheet[];
  readonly names: readonly BookName[];
  readonly dateSystem: 1900 | 1904;
  readonly activeSheet: number;
}

export function readBook(parts: WorkbookParts): Book {
  const xml = partText(parts, "xl/workbook.xml");
  const targets = readTargets(partText(parts, "xl/_rels/workbook.xml.rels"));
  const sheets = tags(xml, "sheet").map((tag): BookSheet => {
    const relationship = xmlAttribute(tag, "(?:\\w+:)?id") ?? "";
    const path = targets.get(relationship);
    const state = xmlAttribute(tag, "state");
    const isSheet = path?.includes("worksheets/") === true;
    return {
      name: xmlAttribute(tag, "name") ?? "",
      sheetId: xmlAttribute(tag, "sheetId") ?? "",
      state: state === "hidden" || state === "veryHidden" ? state : "visible",
      relationship,
      path: isSheet ? path : null,
      isProtected: isSheet && /<(?:\w+:)?sheetProtection\b[^>]*\ssheet="(?:1|true)"/.test(partText(parts, path)),
    };
  });
  const names = [...xml.matchAll(/<(?:\w+:)?definedName\b([^>]*)>([^<]*)</g)].map(([, attributes = "", text = ""]) => ({
    name: xmlAttribute(attributes, "name") ?? "",
    refersTo: xmlText(text),
    hidden: xmlAttribute(attributes, "hidden") === "1",
    sheetPosition: position(xmlAttribute(attributes, "localSheetId")),
  }));
  const flag = xmlAttribute(tags(xml, "workbookPr")[0] ?? "", "date1904");
  return {
    sheets,
    names,
    dateSystem: flag === "1" || flag === "true" ? 1904 : 1900,
    activeSheet: Number(xmlAttribute(tags(xml, "workbookView")[0] ?? "", "activeTab") ?? 0),
  };
}

function position(text: string | undefined): number | null {
  return text === undefined ? null : Number(text);
}

function partText(parts: WorkbookParts, path: string): string {
  const bytes = parts[path];
  return bytes === undefined ? "" : strFromU8(bytes);
}

function tags(xml: string, name: string): string[] {
  return xml.match(new RegExp(`<(?:\\w+:)?${name}\\b[^>]*>`, "g")) ?? [];
}

/** Relationship id to the path of its part, from the top of the package. */
function readTargets(relationships: string): Map<string, string> {
  return new Map(
    tags(relationships, "Relationship").map((tag) => {
      const target = xmlAttribute(tag, "Target") ?? "";
      return [xmlAttribute(tag, "Id") ?? "", target.startsWith("/") ? target.slice(1) : `xl/${target}`];
    }),
  );
}
