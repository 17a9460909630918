import { isProblem } from "../../domain/isProblem";
import { lateRows } from "../../domain/loans/lateRows";
import { quantityHeld } from "../../domain/loans/quantityHeld";
import { returnDay } from "../../domain/loans/returnDay";
import { heldLine } from "./heldLine";
import type { LoanLine } from "./LoanLine";
import type { PieceTable } from "./PieceTable";
import { pieceRowsFrom } from "./pieceRowsFrom";
import { untoldLine } from "./untoldLine";
import type { UntoldLine } from "./untoldLine";

/** Where every loan stands on a day. */
export interface LoansToday {
  /** Most days late first, then most valuable: as LATEROWS has them. */
  readonly late: readonly (LoanLine & { readonly daysLate: number })[];
  readonly dueToday: readonly LoanLine[];
  /** Due after that day, soonest first. */
  readonly dueLater: readonly LoanLine[];
  /** Pieces that are out with no day they are due. */
  readonly piecesWithoutDue: number;
  readonly piecesOut: number;
  /** Rows of which it cannot be told; they stand in no other list. */
  readonly untold: readonly UntoldLine[];
}

/** Sorts the pieces that are out by when they are due. Counts as the worksheet functions count: same rows, same days. */
export function loansToday(tables: readonly PieceTable[], asOf: number): LoansToday {
  const late: (LoanLine & { readonly daysLate: number })[] = [];
  const dueToday: LoanLine[] = [];
  const dueLater: LoanLine[] = [];
  const untold: UntoldLine[] = [];
  let piecesWithoutDue = 0;
  let piecesOut = 0;

  for (const { table, rows } of tables) {
    const daysLateOf = new Map(lateRows(pieceRowsFrom(rows), asOf).map(({ row, daysLate }) => [row, daysLate]));
    for (const row of rows) {
      const quantity = quantityHeld(row, asOf);
      if (quantity === 0) continue;
      const due = returnDay(row);
      const problem = isProblem(quantity) ? quantity : isProblem(due) ? due : null;
      if (typeof quantity === "number") piecesOut += quantity;
      if (problem !== null) {
        untold.push(untoldLine(table, row, problem));
      } else if (due === null) {
        piecesWithoutDue += quantity as number;
      } else {
        const line = heldLine(table, row, due as number, quantity as number);
        const daysLate = daysLateOf.get(row.row);
        if (typeof daysLate === "number") late.push({ ...line, daysLate });
        else if (due === asOf) dueToday.push(line);
        else dueLater.push(line);
      }
    }
  }
  // Sorting is stable: ties keep the order of the sheet.
  late.sort((a, b) => b.daysLate - a.daysLate || (b.value ?? 0) - (a.value ?? 0));
  dueToday.sort((a, b) => (b.value ?? 0) - (a.value ?? 0));
  dueLater.sort((a, b) => a.due - b.due);
  return { late, dueToday, dueLater, piecesWithoutDue, piecesOut, untold };
}
