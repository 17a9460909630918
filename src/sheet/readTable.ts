import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { assignColumns } from "./assignColumns";
import { findDataRows } from "./findDataRows";
import { findHeadingRow } from "./findHeadingRow";
import { headingTexts } from "./headingTexts";
import { headingVocabulary } from "./headingVocabulary";
import { isFilledCell } from "./isFilledCell";
import { readCell } from "./readCell";
import { readColumnChoices } from "./readColumnChoices";
import { remarkFields } from "./remarkFields";
import type { Table } from "./table";
import type { TableKind } from "./tableKind";

/** A range to read as a table, and what the caller needs of it. */
export interface TableRequest {
  /** The range with its heading row; null where the argument is blank. */
  readonly cells: readonly (readonly unknown[])[] | null;
  readonly kind: TableKind;
  /** Fields without which there is no result; a list inside the list means that one of them will do. */
  readonly needs: readonly (string | readonly string[])[];
  /** Other fields that change the result, so that two headings for one of them are a problem; left out: all but remarks. */
  readonly uses?: readonly string[];
  /** The columns argument as the host sent it. */
  readonly columns?: unknown;
  /** The name of the range argument; "rows" when left out. */
  readonly argument?: string;
}

/**
 * A range as a table: its heading row, which column is which, and the rows that hold data.
 *
 * Problems: argument-missing, argument-not-usable (rows of unequal length), heading-row-missing, column-missing, column-twice,
 * and those of the columns argument. A range of headings alone is a table without rows.
 */
export function readTable(request: TableRequest): Outcome<Table> {
  const { cells, kind, needs } = request;
  const argument = request.argument ?? "rows";
  if (cells === null || cells.length === 0)
    return fail("argument-missing", { argument, expected: "the table with its heading row" });
  const width = cells[0]?.length;
  if (!cells.every((row) => Array.isArray(row) && row.length === width)) {
    return fail("argument-not-usable", {
      argument,
      given: "rows of unequal length",
      expected: "one rectangular range with its heading row",
    });
  }
  const choices = readColumnChoices(request.columns, kind);
  if (!choices.ok) return choices;
  const found = findHeadingRow(cells, kind, choices.value);
  if (found === null) return fail("heading-row-missing", { argument });
  const headings = headingTexts(cells[found.row]!);
  const { columnOf, hintOf, contested, absent } = assignColumns(headings, kind, choices.value);

  if (absent.length > 0) {
    const listed = headings.filter((heading) => heading.trim() !== "").map((heading) => `"${showGiven(heading)}"`);
    const shown =
      listed.length > 12 ? `${listed.slice(0, 12).join(", ")} and ${listed.length - 12} more` : listed.join(", ");
    return fail("columns-heading-absent", {
      argument: "columns",
      heading: showGiven(absent[0]!.heading!),
      headings: shown,
    });
  }
  const matters = (field: string): boolean =>
    needs.flat().includes(field) ||
    (request.uses === undefined ? !remarkFields.has(field) : request.uses.includes(field));
  const allColumns: Partial<Record<string, number>> = { ...columnOf };
  for (const [field, columns] of contested) {
    const [first, second] = columns.map((column) => showGiven(headings[column]!));
    if (matters(field))
      return fail("column-twice", { argument, column: canonical(kind, field), field, first: first!, second: second! });
    if (remarkFields.has(field)) allColumns[field] = columns[0];
  }
  for (const need of needs) {
    const fields = typeof need === "string" ? [need] : need;
    if (fields.some((field) => allColumns[field] !== undefined)) continue;
    // A lone match beside cells that mean nothing and are not all words is a row of data that happens to hold such a word.
    const filled = cells[found.row]!.filter(isFilledCell);
    if (found.fieldCount < 2 && filled.length > 2 && filled.some((cell) => typeof readCell(cell) !== "string"))
      return fail("heading-row-missing", { argument });
    const column = fields.map((field) => canonical(kind, field)).join(" or ");
    return fail("column-missing", { argument, column, field: fields[0]! });
  }
  const dataRows = findDataRows(cells, found.row, headings, kind, allColumns);
  return succeed({ kind, cells, headingRow: found.row, headings, columnOf: allColumns, hintOf, dataRows });
}

function canonical(kind: TableKind, field: string): string {
  return headingVocabulary(kind).canonical.get(field) ?? field;
}
