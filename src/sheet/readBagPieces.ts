import type { BagPiece } from "../domain/carry/bags/bagPiece";
import { fail } from "../domain/fail";
import type { ResultCell } from "../domain/resultTable";
import { argumentAt } from "./argumentAt";
import { nameKey } from "./nameKey";
import { readCarriedPieces } from "./readCarriedPieces";
import { readCell } from "./readCell";
import type { Table } from "./table";
import { textAt } from "./textAt";

/**
 * The rows of a pieces table with what they weigh, what they are called, and what they are kept together with.
 *
 * A piece is called what stands under Piece, as typed, else under Description, else Kind. Spellings of what keeps pieces together
 * differ only in case, accents, spacing and punctuation when they are one. Weights as for readCarriedPieces.
 */
export function readBagPieces(table: Table, gramsPerBareUnit: number): BagPiece[] {
  const carried = readCarriedPieces(table, gramsPerBareUnit);
  const togetherColumn = table.columnOf["together"] ?? -1;
  return table.dataRows.map((row, index) => {
    const together = textAt(table, row, togetherColumn);
    return {
      ...carried.at(index),
      label: labelAt(table, row),
      together: typeof together === "string" ? nameKey(together) || together : together,
    };
  });
}

function labelAt(table: Table, row: number): ResultCell {
  for (const field of ["piece", "description", "kind"]) {
    const column = table.columnOf[field];
    if (column === undefined) continue;
    const cell = readCell(table.cells[row]![column]);
    if (cell === null || cell === 0 || (typeof cell === "string" && cell.trim() === "")) continue;
    if (typeof cell !== "object") return cell;
    const outcome = fail("error-in-cell", { argument: argumentAt(table, row, column), given: cell.error });
    return outcome.ok ? null : outcome.problem;
  }
  return null;
}
