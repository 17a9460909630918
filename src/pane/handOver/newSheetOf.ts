import type { Cell } from "../../sheet/cell";
import type { NewSheet } from "../../sheet/buildPlan";
import { readDate } from "../../sheet/readDate";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { freeName } from "../freeName";
import type { DocumentCell, DocumentTable } from "./paper/DocumentTable";

const DATE = /^\d{4}-\d{2}-\d{2}$/;
const TIME = /^\d{2}:\d{2}$/;

/** The rows of a document as a sheet to add, under names that the workbook does not have yet; dates and times become real ones. */
export function newSheetOf(title: string, { headings, rows }: DocumentTable, workbook: WorkbookSnapshot): NewSheet {
  const formats = headings.map((_, column) => formatOf(rows.map((row) => row[column] ?? null)));
  return {
    name: freeName(
      title.replace(/[[\]:*?/\\\s]+/g, " ").replace(/^['\s]+|['\s]+$/g, "") || "Hand over",
      workbook.sheets.map(({ name }) => name),
      " ",
    ),
    tableName: freeName(
      "HandOver",
      workbook.sheets.flatMap(({ tables }) => tables.map(({ name }) => name)),
      "",
    ),
    headings,
    rows: rows.map((row) => row.map((cell, column) => cellOf(cell, formats[column] ?? null))),
    formats,
    lists: headings.map(() => null),
  };
}

/** What a column of dates or of times alone is shown as; null for any other. */
function formatOf(cells: readonly DocumentCell[]): string | null {
  const said = cells.filter((cell) => cell !== null && cell !== "");
  const all = (pattern: RegExp): boolean =>
    said.length > 0 && said.every((cell) => typeof cell === "string" && pattern.test(cell));
  return all(DATE) ? "yyyy-mm-dd" : all(TIME) ? "[h]:mm" : null;
}

function cellOf(cell: DocumentCell, format: string | null): Cell {
  if (cell === null || cell === "") return null;
  if (format === null) return cell;
  const read = format === "[h]:mm" ? readTimeOfDay(cell, "") : readDate(cell, "");
  return read.ok ? read.value : cell;
}
