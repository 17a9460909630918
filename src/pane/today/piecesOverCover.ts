import { quantityHeld } from "../../domain/loans/quantityHeld";
import { amountFromTenThousandths } from "../../domain/value/amountFromTenThousandths";
import { tenThousandths } from "../../domain/value/tenThousandths";
import { valueHeld } from "../../domain/value/valueHeld";
import type { CellPosition } from "../../sheet/cellPosition";
import { namePiece } from "./namePiece";
import type { PieceTable } from "./PieceTable";
import { placeOf } from "./placeOf";

/** A piece that is worth more than the cover of one. */
interface PieceOver {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly name: string;
  readonly value: number;
  readonly overBy: number;
}

/** The pieces held on a day, those that come back on it counted, of which one is worth more than the limit, as COVERGAP has them; the most over first. */
export function piecesOverCover(
  tables: readonly PieceTable[],
  currency: string,
  limit: number,
  asOf: number,
): readonly PieceOver[] {
  const most = tenThousandths(limit);
  const over = tables.flatMap(({ table, rows }) =>
    rows.flatMap((row): PieceOver[] => {
      const value = valueHeld(row, 1);
      if (typeof value !== "number" || value <= most) return [];
      if ((typeof row.currency === "string" ? row.currency : "") !== currency) return [];
      if (quantityHeld(row, asOf, true) === 0) return [];
      return [
        {
          at: placeOf(table, row.row, ["value", "totalValue"]),
          sheetName: table.sheetName,
          name: namePiece(row),
          value: amountFromTenThousandths(value),
          overBy: amountFromTenThousandths(value - most),
        },
      ];
    }),
  );
  return over.sort((a, b) => b.overBy - a.overBy);
}
