import { fail } from "../fail";
import { isoFromSerial } from "../dates/isoFromSerial";
import type { PieceRows } from "../loans/pieceRows";
import type { Outcome } from "../outcome";
import type { ColumnFormat, ResultCell, ResultTable } from "../resultTable";
import { succeed } from "../succeed";
import { amountFromTenThousandths } from "./amountFromTenThousandths";
import type { ValueChanges } from "./valueChanges";
import { valueChangesOf } from "./valueChangesOf";
import type { ValueStep } from "./valueStep";
import { valueSteps } from "./valueSteps";

/** Ten years: a longer span is a slip in a date, and would spill over half the sheet. */
const MOST_DAYS = 3653;

const NOTHING: Omit<ValueStep, "day"> = { pieces: 0, value: 0, unvalued: 0, piecesProblem: null, valueProblem: null };

/**
 * How many pieces are held on each day from one to another, both counted, and what they are worth.
 *
 * One row a day, also where nothing is held; where the sheet has currencies one row a day for each that is held at any
 * time in the span, in the order first seen. Pieces without a value are counted in Pieces and in Unvalued. A cell that
 * cannot be read leaves its problem in the figures of the days it matters to.
 */
export function valueByDay(pieces: PieceRows, from: number, to: number, countBackDay: boolean): Outcome<ResultTable> {
  if (to < from || to - from >= MOST_DAYS) {
    const expected = `a day from ${isoFromSerial(from)} on, and at most ten years later`;
    return fail("argument-not-usable", { argument: "to", given: isoFromSerial(to), expected });
  }
  const held = valueChangesOf(pieces, countBackDay)
    .map((changes) => ({ changes, steps: valueSteps(changes), place: -1 }))
    .filter(({ steps }) => isHeldBetween(steps, from, to));
  const shown = held.length > 0 ? held : [{ changes: { currency: null }, steps: [], place: -1 }];
  const hasCurrencies = pieces.hasCurrencies;
  const rows: ResultCell[][] = [];
  for (let day = from; day <= to; day++) {
    for (const group of shown) {
      while (group.place + 1 < group.steps.length && group.steps[group.place + 1]!.day <= day) group.place++;
      rows.push(rowOf(day, group.steps[group.place] ?? NOTHING, group.changes, hasCurrencies));
    }
  }
  const formats: ColumnFormat[] = ["date", "as is", "money", "as is"];
  const headings = ["Date", "Pieces", "Value", "Unvalued"];
  if (hasCurrencies) {
    headings.push("Currency");
    formats.push("as is");
  }
  return succeed({ headings, formats, rows });
}

function rowOf(
  day: number,
  { pieces, value, unvalued, piecesProblem, valueProblem }: Omit<ValueStep, "day">,
  { currency }: Pick<ValueChanges, "currency">,
  hasCurrencies: boolean,
): ResultCell[] {
  const amount = piecesProblem ?? valueProblem ?? amountFromTenThousandths(value);
  const row: ResultCell[] = [day, piecesProblem ?? pieces, amount, piecesProblem ?? unvalued];
  if (hasCurrencies) row.push(currency);
  return row;
}

/** Whether anything is held, or may be, on some day of a span. */
function isHeldBetween(steps: readonly ValueStep[], from: number, to: number): boolean {
  return steps.some(
    ({ day, pieces, piecesProblem }, place) =>
      day <= to && (steps[place + 1]?.day ?? Infinity) > from && (pieces > 0 || piecesProblem !== null),
  );
}
