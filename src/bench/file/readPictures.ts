import { strFromU8 } from "fflate";
import type { IWorkbookData, IWorksheetData } from "@univerjs/core";
import { coveredIndex } from "../../sheet/coveredIndex";
import { xmlAttribute } from "../../sheet/xmlAttribute";
import type { FilePicture } from "./FilePicture";
import type { Book } from "./readBook";
import { readCellPictures } from "./readCellPictures";
import { relationshipsOf } from "./relationshipsOf";
import type { WorkbookParts } from "./unpackWorkbook";

/** The unit of drawings: 914,400 to the inch (ISO/IEC 29500-1 20.1.10.16), so that a pixel at 96 dots an inch has 9,525. */
const UNITS_A_PIXEL = 9_525;
/** A picture may lie below and right of every cell that is used. */
const MOST_ROWS = 1_048_576;
const MOST_COLUMNS = 16_384;

/** All the pictures of a file, by the cells they lie over (ISO/IEC 29500-1 20.5) or stand in. */
export function readPictures(parts: WorkbookParts, book: Book, data: IWorkbookData): FilePicture[] {
  return book.sheets.flatMap(({ sheetId, path }) => {
    const sheet = data.sheets[sheetId];
    if (path === null || sheet === undefined) return [];
    const drawings = [...relationshipsOf(parts, path).values()].filter((each) =>
      /(?:^|\/)drawings\/[^/]+\.xml$/.test(each),
    );
    const overCells = drawings.flatMap((drawing) => picturesOf(parts, drawing, sheetId, sheet));
    return [...overCells, ...readCellPictures(parts, path, sheetId)];
  });
}

function picturesOf(
  parts: WorkbookParts,
  drawing: string,
  sheetId: string,
  sheet: Partial<IWorksheetData>,
): FilePicture[] {
  const xml = strFromU8(parts[drawing] ?? new Uint8Array());
  const targets = relationshipsOf(parts, drawing);
  const anchors = xml.match(/<(?:\w+:)?(twoCell|oneCell|absolute)Anchor\b[\s\S]*?<\/(?:\w+:)?\1Anchor>/g) ?? [];
  return anchors.flatMap((anchor, position) => {
    const place = placeOf(anchor, sheet);
    const pictures = anchor.match(/<(?:\w+:)?pic\b[\s\S]*?<\/(?:\w+:)?pic>/g) ?? [];
    return pictures.flatMap((picture, index) => {
      const properties = /<(?:\w+:)?cNvPr\b[^>]*>/.exec(picture)?.[0] ?? "";
      const path = targets.get(
        xmlAttribute(/<(?:\w+:)?blip\b[^>]*>/.exec(picture)?.[0] ?? "", "(?:\\w+:)?embed") ?? "",
      );
      if (
        path === undefined ||
        parts[path] === undefined ||
        /^(?:1|true)$/.test(xmlAttribute(properties, "hidden") ?? "")
      )
        return [];
      const key = `${sheetId}\n${drawing}\n${position}.${index}`;
      return [{ key, at: { sheetId, ...place }, name: xmlAttribute(properties, "name") ?? "Picture", path }];
    });
  });
}

/** Hidden rows keep their size here, so that the picture of a row that a filter hides stays with it. */
function placeOf(anchor: string, { rowData, columnData }: Partial<IWorksheetData>): { row: number; column: number } {
  const heightOf = (row: number) => (rowData?.[row]?.h ?? 20) * UNITS_A_PIXEL;
  const widthOf = (column: number) => (columnData?.[column]?.w ?? 69) * UNITS_A_PIXEL;
  const [top, bottom] = span(anchor, "row", "y", "cy", heightOf);
  const [left, right] = span(anchor, "col", "x", "cx", widthOf);
  return {
    row: coveredIndex(top, bottom - top, heightOf, MOST_ROWS),
    column: coveredIndex(left, right - left, widthOf, MOST_COLUMNS),
  };
}

/** Where a picture begins and ends along one axis, in units from the sheet's edge. */
function span(
  anchor: string,
  axis: "row" | "col",
  position: "x" | "y",
  extent: "cx" | "cy",
  sizeOf: (index: number) => number,
): readonly [number, number] {
  const marker = (end: "from" | "to"): number | null => {
    const held = new RegExp(`<(?:\\w+:)?${end}>([\\s\\S]*?)</(?:\\w+:)?${end}>`).exec(anchor)?.[1];
    if (held === undefined) return null;
    const told = (name: string) => Number(new RegExp(`<(?:\\w+:)?${name}>\\s*(-?\\d+)`).exec(held)?.[1] ?? 0);
    const index = Math.min(told(axis), axis === "row" ? MOST_ROWS : MOST_COLUMNS);
    let edge = 0;
    for (let before = 0; before < index; before++) edge += sizeOf(before);
    // An offset beyond its row ends with it, as Excel has it.
    return edge + Math.min(Math.max(0, told(`${axis}Off`)), sizeOf(index));
  };
  const size = Number(xmlAttribute(/<(?:\w+:)?ext\b[^>]*\scx=[^>]*>/.exec(anchor)?.[0] ?? "", extent) ?? 0);
  const start = marker("from") ?? Number(xmlAttribute(/<(?:\w+:)?pos\b[^>]*>/.exec(anchor)?.[0] ?? "", position) ?? 0);
  return [start, marker("to") ?? start + size];
}
