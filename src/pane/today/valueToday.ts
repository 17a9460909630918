import { isProblem } from "../../domain/isProblem";
import type { PieceRow } from "../../domain/loans/pieceRow";
import { quantityHeld } from "../../domain/loans/quantityHeld";
import { valueHeld } from "../../domain/value/valueHeld";
import { valueOut } from "../../domain/value/valueOut";
import type { SheetTable } from "../../sheet/sheetTable";
import { namePiece } from "./namePiece";
import type { PieceTable } from "./PieceTable";
import { pieceRowsFrom } from "./pieceRowsFrom";
import { pictureDays } from "./pictureDays";
import { placeOf } from "./placeOf";
import type { CurrencyValue } from "./CurrencyValue";

interface OneCurrency {
  readonly readable: PieceRow[];
  readonly unread: { readonly table: SheetTable; readonly row: PieceRow }[];
}

/**
 * The value held on a day and on the days about it, one entry a currency, since currencies are never added.
 *
 * Pieces are counted on the day they come back, too, as cover has to hold until they are handed over. A row that
 * cannot be read is left out of every day and listed, where a cell would show #VALUE! for the whole.
 */
export function valueToday(tables: readonly PieceTable[], asOf: number): readonly CurrencyValue[] {
  const byCurrency = new Map<string, OneCurrency>();
  for (const { table, rows } of tables) {
    for (const row of rows) {
      if (row.out === null || row.settled === true) continue;
      const currency = typeof row.currency === "string" ? row.currency : "";
      let group = byCurrency.get(currency);
      if (group === undefined) byCurrency.set(currency, (group = { readable: [], unread: [] }));
      if (isReadable(row)) group.readable.push(row);
      else group.unread.push({ table, row });
    }
  }
  const days = pictureDays(
    tables.flatMap(({ rows }) => rows),
    asOf,
  );
  return [...byCurrency]
    .map(([currency, group]) => currencyToday(currency, group, asOf, days))
    .filter(({ valueOut: value, piecesHeld, unread, days: shown }) => value > 0 || piecesHeld > 0 || unread.length > 0 || shown.some((day) => day.valueOut > 0))
    .sort((a, b) => b.valueOut - a.valueOut);
}

function currencyToday(currency: string, { readable, unread }: OneCurrency, asOf: number, days: readonly number[]): CurrencyValue {
  const pieces = pieceRowsFrom(readable);
  const valueOn = (day: number): number => {
    const outcome = valueOut(pieces, day, true);
    return outcome.ok ? outcome.value : 0;
  };
  let piecesHeld = 0;
  let piecesUnvalued = 0;
  for (const row of readable) {
    const quantity = quantityHeld(row, asOf, true) as number;
    piecesHeld += quantity;
    if (quantity > 0 && valueHeld(row, quantity) === null) piecesUnvalued += quantity;
  }
  return {
    currency,
    valueOut: valueOn(asOf),
    piecesHeld,
    piecesUnvalued,
    unread: unread
      .filter(({ row }) => quantityHeld(row, asOf, true) !== 0)
      .map(({ table, row }) => ({
        at: placeOf(table, row.row, isProblem(valueHeld(row, 1)) ? ["value", "totalValue", "out"] : ["out"]),
        sheetName: table.sheetName,
        name: namePiece(row),
      })),
    days: days.map((day) => ({ day, valueOut: valueOn(day) })),
  };
}

/** Whether nothing in the row could keep its value on some day from being told. */
function isReadable(row: PieceRow): boolean {
  const decides = [row.out, row.back, row.settled, row.quantity, row.quantityBack, row.currency, row.value, row.totalValue];
  return !decides.some((field) => isProblem(field));
}
