import type { KindColumnChoice } from "../../sheet/columnChoices";
import { isFilledCell } from "../../sheet/isFilledCell";
import { readCell } from "../../sheet/readCell";
import { sameHeading } from "../../sheet/sameHeading";
import type { SheetTable } from "../../sheet/sheetTable";
import { sayTermsRead } from "../sayTermsRead";
import type { ColumnReading } from "./ColumnReading";
import { saySample } from "./saySample";

const SAMPLES = 3;
/** Among so many rows three different cells are found, or the column says little. */
const ROWS_LOOKED_AT = 200;

/** How each column of a table was read, in the order of the sheet; columns with neither heading nor cells are left out. */
export function columnReadings(table: SheetTable, choices: readonly KindColumnChoice[]): readonly ColumnReading[] {
  const fieldOf = new Map(Object.entries(table.columnOf).map(([field, column]) => [column, field]));
  const contestedBy = new Map<number, string>();
  for (const [field, columns] of table.contested ?? []) for (const column of columns) contestedBy.set(column, field);
  return table.headings.flatMap((heading, column) => {
    const field = fieldOf.get(column) ?? null;
    const samples = samplesOf(table, column, field);
    const isBlank = heading.trim() === "";
    if (isBlank && samples.length === 0) return [];
    const isTwice = table.headings.some((other, at) => at !== column && other.trim() === heading.trim());
    const own = choices.filter((choice) => choice.kind === table.kind);
    return {
      column,
      heading,
      field,
      contested: contestedBy.get(column) ?? null,
      isChosen: own.some((choice) => choice.heading !== null && sameHeading(choice.heading, heading)),
      samples,
      obstacle: isBlank ? ("no heading" as const) : isTwice ? ("heading twice" as const) : null,
    };
  });
}

function samplesOf(table: SheetTable, column: number, field: string | null): readonly string[] {
  const heading = table.headings[column] ?? "";
  const said = new Set<string>();
  for (const row of table.dataRows.slice(0, ROWS_LOOKED_AT)) {
    const cell = readCell(table.cells[row]?.[column]);
    if (isFilledCell(cell))
      said.add(saySample(cell, table.kind, field, heading) + (field === "terms" ? sayReading(cell) : ""));
    if (said.size === SAMPLES) break;
  }
  return [...said];
}

/** What terms are read as, where that is not what they say word for word. */
function sayReading(cell: unknown): string {
  const read = sayTermsRead(cell, "terms");
  if (!read.ok) return " (not understood)";
  return read.value === null || read.value === cell ? "" : ` (read as ${read.value})`;
}
