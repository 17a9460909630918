import type { BuildPlan } from "../../sheet/buildPlan";
import type { Cell } from "../../sheet/cell";
import type { CellEdit } from "../../sheet/cellEdit";
import type { WorkbookSnapshot } from "../../sheet/sheetSnapshot";
import { freeName } from "../freeName";
import type { ClosedDaysTable } from "./ClosedDaysTable";
import type { ListedHoliday } from "./listedHolidays";

/** How closed days come into the workbook, in one step: into blank rows of their table, or as new rows or a new table. */
export type AddClosedDays =
  { readonly how: "write"; readonly edits: readonly CellEdit[] } | { readonly how: "build"; readonly plan: BuildPlan };

const FORMAT = "yyyy-mm-dd";
const NOTHING: BuildPlan = { addSheets: [], removeSheets: [], addColumns: [], removeColumns: [] };

/**
 * How to add days to a table of closed days; `into` null makes one. Blank rows at the foot of the table are filled where they are
 * enough, else the table grows; a filled cell is never written over.
 */
export function addClosedDays(
  days: readonly Pick<ListedHoliday, "day" | "name">[],
  into: ClosedDaysTable | null,
  workbook: WorkbookSnapshot,
): AddClosedDays {
  if (into === null) return { how: "build", plan: newTable(days, workbook) };
  const { sheet, area, dayColumn, nameColumn } = into;
  const { sheetId } = sheet;
  const firstBlank = firstBlankRow(into);
  const end = area.row + area.rowCount;
  if (end - firstBlank >= days.length) {
    const edits = days.flatMap(({ day, name }, index): CellEdit[] => {
      const at = (column: number) => ({ sheetId, row: firstBlank + index, column: area.column + column });
      return [
        { at: at(dayColumn), expected: null, value: day, numberFormat: FORMAT },
        ...(nameColumn === null ? [] : [{ at: at(nameColumn), expected: null, value: name }]),
      ];
    });
    return { how: "write", edits };
  }
  const columns = Array.from({ length: area.columnCount }, (_, column) => column);
  const rows = days.map(({ day, name }) =>
    columns.map((column): Cell => (column === dayColumn ? day : column === nameColumn ? name : null)),
  );
  const formats = columns.map((column) => (column === dayColumn ? FORMAT : null));
  const addRows = [{ sheetId, tableName: area.name, row: end, column: area.column, rows, formats }];
  return { how: "build", plan: { ...NOTHING, addRows } };
}

/** The first of the blank rows at the table's foot; the row below the table where its last row is filled. */
function firstBlankRow({ sheet, area }: ClosedDaysTable): number {
  const left = area.column - sheet.firstColumn;
  const isBlank = (row: number): boolean =>
    [sheet.values, sheet.formulas].every((cells) =>
      (cells[row - sheet.firstRow] ?? []).slice(left, left + area.columnCount).every((cell) => cell === null),
    );
  let row = area.row + area.rowCount;
  while (row - 1 > area.row && isBlank(row - 1)) row -= 1;
  return row;
}

function newTable(days: readonly Pick<ListedHoliday, "day" | "name">[], { sheets }: WorkbookSnapshot): BuildPlan {
  const taken = sheets.flatMap(({ tables }) => tables.map(({ name }) => name));
  const sheet = {
    name: freeName(
      "Closed days",
      sheets.map(({ name }) => name),
      " ",
    ),
    tableName: freeName("ClosedDays", taken, ""),
    headings: ["Closed", "Why"],
    rows: days.map(({ day, name }) => [day, name]),
    formats: [FORMAT, null],
    lists: [null, null],
  };
  return { ...NOTHING, addSheets: [sheet] };
}
