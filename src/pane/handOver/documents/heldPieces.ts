import { isProblem } from "../../../domain/isProblem";
import type { PieceRow } from "../../../domain/loans/pieceRow";
import { quantityHeld } from "../../../domain/loans/quantityHeld";
import type { SheetTable } from "../../../sheet/sheetTable";
import type { PieceTable } from "../../today/PieceTable";
import { untoldLine } from "../../today/untoldLine";

/** A row of which so many pieces are held. */
export interface HeldPiece {
  readonly table: SheetTable;
  readonly row: PieceRow;
  readonly quantity: number;
}

/**
 * The rows held on a day, in the order of the sheet, and a sentence for each of which that cannot be told.
 *
 * With `countBackDay` a piece that comes back on the day is held on it, so that the paper it travels with still lists it.
 */
export function heldPieces(
  tables: readonly PieceTable[],
  day: number,
  countBackDay: boolean,
): { readonly held: readonly HeldPiece[]; readonly untold: readonly string[] } {
  const held: HeldPiece[] = [];
  const untold: string[] = [];
  for (const { table, rows } of tables) {
    for (const row of rows) {
      const quantity = quantityHeld(row, day, countBackDay);
      if (isProblem(quantity)) {
        const { name, sentence } = untoldLine(table, row, quantity);
        untold.push(`${name} is left out: ${sentence}`);
      } else if (quantity > 0) held.push({ table, row, quantity });
    }
  }
  return { held, untold };
}
