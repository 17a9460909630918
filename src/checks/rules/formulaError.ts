import { readCell } from "../../sheet/readCell";
import { cellIn } from "../cellIn";
import { cellsOfRow } from "../cellsOfRow";
import type { CheckedRow } from "../checkedRow";
import type { CheckFacts } from "../checkFacts";
import { defineRule } from "../defineRule";
import { isInDoubt } from "../isInDoubt";

/** Host files write our functions with a prefix: _xldudf_TACK_DUE. */
const OUR_FUNCTION = /TACK[._]/;

/**
 * An error that follows from another cell of its row is left to that cell: the text date, not the due day worked out from it.
 * So is the error of one of our functions in a row that is not out yet: there is nothing to compute it from.
 */
export const formulaError = defineRule({
  id: "formulaError",
  about: "An error value in a column that the functions read.",
  why: "Every total over the table either stops at the error or leaves the row out.",
  severity: "error",
  fixable: false,
  scope: "row",
  tables: ["pieces", "requests", "lenders", "looks", "day", "stops", "receipts", "shoes"],
  needs: [],
  messages: {
    fromFormula: "The formula gives {{error}}. Mend it, or the cells it reads.",
    typed: "{{error}} stands here as a value. Type what is right, or clear the cell.",
  },
  check(row, report, facts) {
    const { columnOf, cells, formulas } = row.table;
    const held = cells[row.row];
    if (held === undefined) return;
    for (const field in columnOf) {
      const column = columnOf[field]!;
      const raw = held[column];
      if (typeof raw !== "object" || raw === null) continue;
      const cell = readCell(raw);
      if (cell === null || typeof cell !== "object") continue;
      const formula = formulas[row.row]?.[column] ?? null;
      if (formula === null) report({ row, field, messageId: "typed", data: { error: cell.error } });
      else if (!followsFromRow(formula, row, facts)) {
        report({ row, field, messageId: "fromFormula", data: { error: cell.error } });
      }
    }
  },
});

function followsFromRow(formula: string, row: CheckedRow, facts: CheckFacts): boolean {
  const columns = cellsOfRow(formula, row);
  const { columnOf, cells } = row.table;
  const fields = Object.keys(columnOf).filter((field) => columns.includes(columnOf[field]!));
  if (fields.some((field) => isInDoubt(row, field, facts))) return true;
  // An error in a column that has no meaning here is the root all the same.
  if (columns.some((column) => isError(cells[row.row]?.[column]))) return true;
  return OUR_FUNCTION.test(formula) && fields.includes("out") && cellIn(row, "out") === null;
}

function isError(raw: unknown): boolean {
  const cell = readCell(raw);
  return typeof cell === "object" && cell !== null;
}
