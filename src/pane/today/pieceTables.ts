import type { PieceRow } from "../../domain/loans/pieceRow";
import { readPieces } from "../../sheet/readPieces";
import type { SheetTable } from "../../sheet/sheetTable";
import type { PieceTable } from "./PieceTable";

/** The tables of pieces among the tables of a workbook, read as the worksheet functions read them. */
export function pieceTables(tables: readonly SheetTable[]): readonly PieceTable[] {
  return tables
    .filter(({ kind }) => kind === "pieces")
    .map((table) => {
      const pieces = readPieces(table);
      return { table, rows: Array.from({ length: pieces.count }, (_, index) => readOnce(pieces.at(index))) };
    });
}

/** A row reads its cell each time a field is asked for, and Today asks again for each day of its picture. */
function readOnce(row: PieceRow): PieceRow {
  return {
    row: row.row,
    piece: row.piece,
    description: row.description,
    kind: row.kind,
    lender: row.lender,
    look: row.look,
    talent: row.talent,
    quantity: row.quantity,
    quantityBack: row.quantityBack,
    conditionOut: row.conditionOut,
    conditionBack: row.conditionBack,
    value: row.value,
    totalValue: row.totalValue,
    currency: row.currency,
    weight: row.weight,
    out: row.out,
    due: row.due,
    extendedTo: row.extendedTo,
    back: row.back,
    shoot: row.shoot,
    settled: row.settled,
  };
}
