import { readPieces } from "../../sheet/readPieces";
import type { SheetTable } from "../../sheet/sheetTable";
import type { PieceTable } from "./PieceTable";

/** The tables of pieces among the tables of a workbook, read as the worksheet functions read them. */
export function pieceTables(tables: readonly SheetTable[]): readonly PieceTable[] {
  return tables
    .filter(({ kind }) => kind === "pieces")
    .map((table) => {
      const pieces = readPieces(table);
      return { table, rows: Array.from({ length: pieces.count }, (_, index) => pieces.at(index)) };
    });
}
