import type { PieceRows } from "../domain/loans/pieceRows";
import type { Outcome } from "../domain/outcome";
import { succeed } from "../domain/succeed";
import { readPieces } from "../sheet/readPieces";
import { readTable } from "../sheet/readTable";
import { rangeArgument } from "./rangeArgument";

/** The rows argument of a function about the value held, with all that decides on it. */
export function valuedPieces(rows: unknown, columns: unknown): Outcome<PieceRows> {
  const table = readTable({
    cells: rangeArgument(rows),
    kind: "pieces",
    needs: [["value", "totalValue"], "out", "back"],
    uses: ["settled", "quantity", "quantityBack", "currency"],
    columns,
  });
  return table.ok ? succeed(readPieces(table.value)) : table;
}
