import { xmlAttribute } from "../../sheet/xmlAttribute";
import { xmlEscape } from "../../sheet/xmlEscape";
import { setXmlAttribute } from "./setXmlAttribute";

/** One sheet in the order of its tabs, as the workbook's part must list it. */
export interface ListedSheet {
  /** The relationship to its part. */
  readonly relationship: string;
  readonly name: string;
  readonly hidden: boolean;
}

/**
 * The workbook's own part with these sheets, and the wish that Excel calculates everything anew on opening, since what
 * the grid calculated may not be what Excel would.
 */
export function bookPatch(xml: string, sheets: readonly ListedSheet[], activeSheet: number): string {
  const tags = xml.match(/<(?:\w+:)?sheet\s[^>]*>/g) ?? [];
  const relationshipOf = (tag: string) => xmlAttribute(tag, "(?:\\w+:)?id") ?? "";
  let nextId = Math.max(0, ...tags.map((tag) => Number(xmlAttribute(tag, "sheetId") ?? 0)));
  const listed = sheets.map(({ relationship, name, hidden }) => {
    const held = tags.find((tag) => relationshipOf(tag) === relationship);
    const tag = held ?? `<sheet name="" sheetId="${++nextId}" r:id="${xmlEscape(relationship)}"/>`;
    const state = xmlAttribute(tag, "state");
    const hiddenState = state === "veryHidden" ? state : "hidden";
    return setXmlAttribute(setXmlAttribute(tag, "name", name), "state", hidden ? hiddenState : null);
  });
  const order = sheets.map(({ relationship }) => relationship);
  const positionOf = (old: string) => order.indexOf(relationshipOf(tags[Number(old)] ?? ""));
  return withFullCalculation(
    xml
      .replace(/(<(?:\w+:)?sheets\b[^>]*>)[\s\S]*?(<\/(?:\w+:)?sheets>)/, (_, open: string, close: string) => {
        return open + listed.join("") + close;
      })
      .replace(/<(\w+:)?definedName\b([^>]*)>[^<]*<\/(?:\w+:)?definedName>/g, (whole, _prefix, attributes: string) => {
        const old = xmlAttribute(attributes, "localSheetId");
        if (old === undefined) return whole;
        const position = positionOf(old);
        // A name of a sheet that is gone goes with it.
        return position < 0 ? "" : whole.replace(/\slocalSheetId="\d+"/, ` localSheetId="${position}"`);
      })
      .replace(/<((?:\w+:)?definedNames)\b[^>]*>\s*<\/\1>/, "")
      .replace(/<(?:\w+:)?workbookView\b[^>]*>/, (tag) => {
        const moved = setXmlAttribute(tag, "activeTab", String(activeSheet));
        return Number(xmlAttribute(tag, "firstSheet") ?? 0) >= sheets.length
          ? setXmlAttribute(moved, "firstSheet", null)
          : moved;
      }),
  );
}

function withFullCalculation(xml: string): string {
  if (/<(?:\w+:)?calcPr\b/.test(xml)) {
    return xml.replace(/<(?:\w+:)?calcPr\b[^>]*>/, (tag) => setXmlAttribute(tag, "fullCalcOnLoad", "1"));
  }
  const calcPr = '<calcPr fullCalcOnLoad="1"/>';
  // The order of a workbook's part is fixed (ISO/IEC 29500-1 18.2.27): after the names, before what follows here.
  return xml.replace(
    /<(?:\w+:)?(?:oleSize|customWorkbookViews|pivotCaches|smartTagPr|smartTagTypes|webPublishing|fileRecoveryPr|webPublishObjects|extLst)\b|<\/(?:\w+:)?workbook>/,
    (next) => calcPr + next,
  );
}
