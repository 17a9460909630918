import type { Row, Worksheet } from "@cj-tech-master/excelts";
import { BooleanNumber, type IRange, type IWorksheetData } from "@univerjs/core";
import { areaOfReference, type Area } from "../../sheet/areaOfReference";
import type { BookSheet } from "./readBook";
import { cellContent } from "./cellContent";
import { cellStyle } from "./cellStyle";
import type { StyleTable } from "./styleTable";

/** Pixels of a column: its width in characters of 7 pixels and 5 of padding (ISO/IEC 29500-1 18.3.1.13, at 96 dpi). */
const pixelsOfWidth = (characters: number) => Math.round(characters * 7 + 5);
const pixelsOfPoints = (points: number) => Math.round((points * 96) / 72);

const SPARE_ROWS = 60;
const SPARE_COLUMNS = 6;
/** A result that repeats a wide table's own columns must fit on a sheet with nothing else on it. */
const LEAST_COLUMNS = 64;

/** One sheet of the file as the grid's engine keeps it. */
export function sheetData(
  worksheet: Worksheet,
  book: BookSheet,
  dateSystem: 1900 | 1904,
  styles: StyleTable,
): Partial<IWorksheetData> {
  const cellData: IWorksheetData["cellData"] = {};
  const rowData: IWorksheetData["rowData"] = {};
  const spilled: Area[] = [];
  worksheet.eachRow({ includeEmpty: false }, (row, rowNumber) => {
    if (row.hidden || row.height !== undefined) {
      rowData[rowNumber - 1] = {
        ...(row.height !== undefined && { h: pixelsOfPoints(row.height), ia: BooleanNumber.FALSE }),
        ...(row.hidden && { hd: BooleanNumber.TRUE }),
      };
    }
    const ownHeight = row.height === undefined ? heightOfLargestText(row) : undefined;
    if (ownHeight !== undefined) rowData[rowNumber - 1] = { ...rowData[rowNumber - 1], h: ownHeight };
    row.eachCell({ includeEmpty: true }, (cell, columnNumber) => {
      // Of a merged block only the first cell holds anything.
      const inside = cell.isMerged && cell.master !== cell;
      const style = styles.idOf(cellStyle(cell));
      const content = inside ? {} : cellContent(cell.value, dateSystem);
      const held = cell.value;
      if (typeof held === "object" && held !== null && "ref" in held) {
        const area = areaOfReference(String(held.ref));
        if (area !== null) spilled.push(area);
      }
      if (content.v === undefined && content.f === undefined && style === undefined) return;
      (cellData[rowNumber - 1] ??= {})[columnNumber - 1] = { ...content, ...(style !== undefined && { s: style }) };
    });
  });
  for (const area of spilled) clearSpilled(cellData, area);
  return {
    id: book.sheetId,
    name: book.name,
    hidden: book.state === "visible" ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    rowCount: Math.max(120, worksheet.rowCount + SPARE_ROWS),
    columnCount: Math.max(LEAST_COLUMNS, worksheet.columnCount + SPARE_COLUMNS),
    defaultColumnWidth: 69,
    defaultRowHeight: 20,
    cellData,
    rowData,
    columnData: columns(worksheet),
    freeze: frozen(worksheet),
    mergeData: (worksheet.model.merges ?? [])
      .map(areaOfReference)
      .filter((area): area is Area & IRange => area !== null),
    showGridlines: firstView(worksheet)?.showGridLines === false ? BooleanNumber.FALSE : BooleanNumber.TRUE,
  };
}

/** Excel fits a row without a height of its own to its largest text when it opens the file. */
function heightOfLargestText(row: Row): number | undefined {
  let largest = 11;
  row.eachCell((cell) => {
    largest = Math.max(largest, cell.font?.size ?? 0);
  });
  return largest > 11 ? pixelsOfPoints(largest * 1.35) : undefined;
}

/** A file keeps what a formula spilled; left there it would stand in the formula's way. */
function clearSpilled(cellData: IWorksheetData["cellData"], area: Area): void {
  for (let row = area.startRow; row <= area.endRow; row++) {
    for (let column = area.startColumn; column <= area.endColumn; column++) {
      const cell = cellData[row]?.[column];
      if (cell === undefined || (row === area.startRow && column === area.startColumn)) continue;
      delete cell.v;
      delete cell.t;
      delete cell.f;
    }
  }
}

function columns(worksheet: Worksheet): IWorksheetData["columnData"] {
  const columnData: IWorksheetData["columnData"] = {};
  (worksheet.columns ?? []).forEach((column, index) => {
    if (column.width === undefined && !column.hidden) return;
    columnData[index] = {
      ...(column.width !== undefined && { w: pixelsOfWidth(column.width) }),
      ...(column.hidden && { hd: BooleanNumber.TRUE }),
    };
  });
  return columnData;
}

function frozen(worksheet: Worksheet): IWorksheetData["freeze"] {
  const view = firstView(worksheet);
  const split = view?.state === "frozen" ? view : undefined;
  const rows = split?.ySplit ?? 0;
  const columnCount = split?.xSplit ?? 0;
  return { xSplit: columnCount, ySplit: rows, startRow: rows || -1, startColumn: columnCount || -1 };
}

/** The reader leaves views out for a sheet that has none, whatever its types say. */
function firstView({ views }: { views?: Worksheet["views"] }): Worksheet["views"][number] | undefined {
  return views?.[0];
}
