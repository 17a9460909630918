import { isProblem } from "../../domain/isProblem";
import type { PieceRow } from "../../domain/loans/pieceRow";
import type { Problem } from "../../domain/problem";
import { quantityHeld } from "../../domain/loans/quantityHeld";
import { valueByDay } from "../../domain/value/valueByDay";
import type { PieceTable } from "./PieceTable";
import { pieceRowsFrom } from "./pieceRowsFrom";
import { pictureDays } from "./pictureDays";
import { untoldLine } from "./untoldLine";
import type { UntoldLine } from "./untoldLine";
import type { CurrencyValue } from "./CurrencyValue";

const DECIDING = ["out", "back", "settled", "quantity", "quantityBack", "currency", "value", "totalValue"] as const;

/** A row of VALUEBYDAY. */
type DayFigures = readonly [day: number, pieces: number, value: number, unvalued: number];
const NOTHING: DayFigures = [0, 0, 0, 0];

interface OneCurrency {
  readonly readable: PieceRow[];
  readonly unread: { readonly row: PieceRow; readonly line: UntoldLine }[];
}

/**
 * The value held on a day and on the days about it as VALUEBYDAY gives it, one entry a currency, since currencies are never added.
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
  // One currency and whole cells only, so there is one row a day and every figure in it is a number.
  const table = valueByDay(pieceRowsFrom(readable), days[0]!, days.at(-1)!, true);
  const byDay = (table.ok ? table.value.rows : []).map(([day, pieces, value, unvalued]): DayFigures => [
    Number(day),
    Number(pieces),
    Number(value),
    Number(unvalued),
  ]);
  const [, piecesHeld, valueOut, piecesUnvalued] = byDay[asOf - days[0]!] ?? NOTHING;
  return {
    currency,
    valueOut,
    piecesHeld,
    piecesUnvalued,
    unread: unread.filter(({ row }) => quantityHeld(row, asOf, true) !== 0).map(({ line }) => line),
    rows: readable,
    days: byDay.map(([day, , value]) => ({ day, valueOut: value })),
  };
}

/** The first thing in the row that could keep its value on some day from being told. */
function obstacleIn(row: PieceRow): Problem | null {
  return DECIDING.map((field) => row[field]).find(isProblem) ?? null;
}
