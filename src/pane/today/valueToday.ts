import { isProblem } from "../../domain/isProblem";
import type { PieceRow } from "../../domain/loans/pieceRow";
import type { Problem } from "../../domain/problem";
import { quantityHeld } from "../../domain/loans/quantityHeld";
import { valueHeld } from "../../domain/value/valueHeld";
import { valueOut } from "../../domain/value/valueOut";
import type { PieceTable } from "./PieceTable";
import { pieceRowsFrom } from "./pieceRowsFrom";
import { pictureDays } from "./pictureDays";
import { untoldLine } from "./untoldLine";
import type { UntoldLine } from "./untoldLine";
import type { CurrencyValue } from "./CurrencyValue";

const DECIDING = ["out", "back", "settled", "quantity", "quantityBack", "currency", "value", "totalValue"] as const;

interface OneCurrency {
  readonly readable: PieceRow[];
  readonly unread: { readonly row: PieceRow; readonly line: UntoldLine }[];
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
      const obstacle = obstacleIn(row);
      if (obstacle === null) {
        group.readable.push(row);
        continue;
      }
      group.unread.push({ row, line: untoldLine(table, row, obstacle) });
    }
  }
  const days = pictureDays(
    tables.flatMap(({ rows }) => rows),
    asOf,
  );
  return [...byCurrency]
    .map(([currency, group]) => currencyToday(currency, group, asOf, days))
    .filter(
      ({ valueOut: value, piecesHeld, unread, days: shown }) =>
        value > 0 || piecesHeld > 0 || unread.length > 0 || shown.some((day) => day.valueOut > 0),
    )
    .sort((a, b) => b.valueOut - a.valueOut);
}

function currencyToday(
  currency: string,
  { readable, unread }: OneCurrency,
  asOf: number,
  days: readonly number[],
): CurrencyValue {
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
    unread: unread.filter(({ row }) => quantityHeld(row, asOf, true) !== 0).map(({ line }) => line),
    days: days.map((day) => ({ day, valueOut: valueOn(day) })),
  };
}

/** The first thing in the row that could keep its value on some day from being told. */
function obstacleIn(row: PieceRow): Problem | null {
  return DECIDING.map((field) => row[field]).find(isProblem) ?? null;
}
