import { usualWarningDays } from "../../domain/loans/usualWarningDays";
import type { CellPosition } from "../../sheet/cellPosition";
import { dayAt } from "../../sheet/dayAt";
import { cellText } from "../cellText";
import { namePiece } from "./namePiece";
import type { PieceTable } from "./PieceTable";
import { placeOf } from "./placeOf";

/** A piece that is fitted on a day. */
export interface FittingLine {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly name: string;
  readonly day: number;
  /** "" where the row names none; so too the look. */
  readonly talent: string;
  readonly look: string;
}

/** The fittings on a day and in the days after in which a thing is soon, by day; null where no table of pieces keeps them. */
export function fittingsToday(pieces: readonly PieceTable[], asOf: number): readonly FittingLine[] | null {
  const keeping = pieces.filter(({ table }) => table.columnOf["fitting"] !== undefined);
  if (keeping.length === 0) return null;
  const lines = keeping.flatMap(({ table, rows }) =>
    rows.flatMap((row) => {
      const day = dayAt(table, row.row, table.columnOf["fitting"]!);
      if (typeof day !== "number" || day < asOf || day > asOf + usualWarningDays) return [];
      const { row: index } = row;
      return [
        {
          at: placeOf(table, index, ["fitting"]),
          sheetName: table.sheetName,
          name: namePiece(row),
          day,
          talent: cellText(table, index, "talent"),
          look: cellText(table, index, "look"),
        },
      ];
    }),
  );
  return lines.sort((a, b) => a.day - b.day);
}
