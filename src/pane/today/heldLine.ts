import type { PieceRow } from "../../domain/loans/pieceRow";
import { amountFromTenThousandths } from "../../domain/value/amountFromTenThousandths";
import { valueHeld } from "../../domain/value/valueHeld";
import type { SheetTable } from "../../sheet/sheetTable";
import type { LoanLine } from "./LoanLine";
import { namePiece } from "./namePiece";
import { placeOf } from "./placeOf";

/** A row of which so many pieces are out, due back on a day, as Today lists it. */
export function heldLine(table: SheetTable, row: PieceRow, due: number, quantity: number): LoanLine {
  const value = valueHeld(row, quantity);
  return {
    at: placeOf(table, row.row, row.extendedTo === null ? ["due", "out"] : ["extendedTo", "due", "out"]),
    sheetName: table.sheetName,
    name: namePiece(row),
    lender: typeof row.lender === "string" ? row.lender : "",
    due,
    quantity,
    value: typeof value === "number" ? amountFromTenThousandths(value) : null,
    currency: typeof row.currency === "string" ? row.currency : "",
  };
}
