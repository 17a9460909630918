import { columnFromLetters } from "../../sheet/columnFromLetters";
import { columnLetters } from "../../sheet/columnLetters";
import { shiftedSpan } from "./shiftedSpan";
import type { StructureEdit } from "./structureEdit";

const PARTS = /^(\$?)([A-Z]{1,3})?(\$?)(\d+)?(?::(\$?)([A-Z]{1,3})?(\$?)(\d+)?)?$/;

/**
 * A reference such as B2:F11, $B$2, A:C or 2:4 after rows or columns were put in or taken out, with its dollar signs;
 * null where nothing of it is left.
 */
export function shiftedReference(reference: string, edit: StructureEdit): string | null {
  const found = PARTS.exec(reference);
  if (found === null) return reference;
  const [, columnFix = "", letters, rowFix = "", digits, columnFix2 = "", letters2, rowFix2 = "", digits2] = found;
  const isRange = reference.includes(":");
  let [firstColumn, lastColumn] = [columnFromLetters(letters), columnFromLetters(letters2 ?? letters)];
  let [firstRow, lastRow] = [rowFromDigits(digits), rowFromDigits(digits2 ?? digits)];
  if (edit.axis === "row" && firstRow !== null && lastRow !== null) {
    const span = shiftedSpan([firstRow, lastRow], edit);
    if (span === null) return null;
    [firstRow, lastRow] = span;
  }
  if (edit.axis === "column" && firstColumn !== null && lastColumn !== null) {
    const span = shiftedSpan([firstColumn, lastColumn], edit);
    if (span === null) return null;
    [firstColumn, lastColumn] = span;
  }
  // "$1:$2" has its dollar sign where a column's would stand.
  const first = corner(columnFix, firstColumn, rowFix, firstRow);
  return isRange ? `${first}:${corner(columnFix2, lastColumn, rowFix2, lastRow)}` : first;
}

function rowFromDigits(digits: string | undefined): number | null {
  return digits === undefined ? null : Number(digits) - 1;
}

function corner(columnFix: string, column: number | null, rowFix: string, row: number | null): string {
  const letters = column === null ? "" : columnLetters(column);
  return columnFix + letters + rowFix + (row === null ? "" : row + 1);
}
