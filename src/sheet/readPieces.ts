import { fail } from "../domain/fail";
import type { FieldValue } from "../domain/fieldValue";
import type { PieceRow } from "../domain/loans/pieceRow";
import type { PieceRows } from "../domain/loans/pieceRows";
import type { Outcome } from "../domain/outcome";
import { currencyFromText } from "./currencyFromText";
import { readDate } from "./readDate";
import { readMoney } from "./readMoney";
import { readQuantity } from "./readQuantity";
import { readSettled } from "./readSettled";
import { readText } from "./readText";
import { readWeight } from "./readWeight";
import { showGiven } from "../domain/showGiven";
import { signedCurrencies } from "./signedCurrencies";
import type { Table } from "./table";

/** The fields of a piece that can be asked for; a value or total value comes with its currency. */
export type PieceField = Exclude<keyof PieceRow, "row">;

const LAST_DAY = 2958465;

/**
 * The rows of a pieces table, of which only the columns of the fields asked for are read.
 *
 * A plain number or text takes the short way, since a table may have 100,000 rows. A 0 in a date, a text,
 * a quantity, a weight or a value is blank, as some hosts send blank cells so. A problem names the heading
 * and the row, counted from 1 in the range as passed. Amounts below 0 are problems.
 */
export function readPieces(table: Table, fields: readonly PieceField[]): PieceRows {
  const { cells, dataRows } = table;
  const columnFor = (field: PieceField): number => (fields.includes(field) ? (table.columnOf[field] ?? -1) : -1);
  const argumentAt = (row: number, column: number): string => `${table.headings[column]?.trim() ?? ""}, row ${row + 1}`;

  const textAt = (row: number, column: number): FieldValue<string> => {
    if (column < 0) return null;
    const raw = cells[row]![column];
    if (typeof raw === "string") return raw.trim() || null;
    if (isBlank(raw)) return null;
    return fieldOf(readText(raw, argumentAt(row, column)), "0");
  };
  const dayAt = (row: number, column: number): FieldValue<number> => {
    if (column < 0) return null;
    const raw = cells[row]![column];
    if (typeof raw === "number" && raw >= 1 && raw <= LAST_DAY) return Math.floor(raw);
    return isBlank(raw) ? null : fieldOf(readDate(raw, argumentAt(row, column)), 0);
  };
  const quantityAt = (row: number, column: number): FieldValue<number> => {
    if (column < 0) return null;
    const raw = cells[row]![column];
    if (typeof raw === "number" && raw > 0 && Number.isSafeInteger(raw)) return raw;
    return isBlank(raw) ? null : fieldOf(readQuantity(raw, argumentAt(row, column)), 0);
  };

  const valueColumn = columnFor("value");
  const totalColumn = columnFor("totalValue");
  const moneyColumns = [valueColumn, totalColumn].filter((column) => column >= 0);
  // Amounts are never added without their currencies, so whoever asks for a value gets the currency too.
  const currencyColumn = moneyColumns.length > 0 ? (table.columnOf["currency"] ?? -1) : columnFor("currency");
  const headingCurrency =
    moneyColumns.length === 0
      ? null
      : (table.hintOf?.["value"]?.currency ?? table.hintOf?.["totalValue"]?.currency ?? null);
  const signs = new Set(currencyColumn >= 0 ? [] : signedCurrencies(table, moneyColumns));
  if (headingCurrency !== null) signs.add(headingCurrency);
  // Without a Currency column one sign, on however few amounts, is the currency of them all.
  const onlySign = currencyColumn < 0 && signs.size === 1 ? [...signs][0]! : null;

  const currencyAt = (row: number): FieldValue<string> => {
    const named = textAt(row, currencyColumn);
    if (typeof named === "string") return currencyFromText(named) ?? named.toUpperCase();
    if (named !== null || onlySign !== null) return named ?? onlySign;
    for (const column of moneyColumns) {
      const raw = cells[row]![column];
      if (typeof raw !== "string") continue;
      const money = readMoney(raw, "");
      if (money.ok && money.value !== null && money.value.currency !== null) return money.value.currency;
    }
    return headingCurrency;
  };
  const amountAt = (row: number, column: number, currency: FieldValue<string>): FieldValue<number> => {
    if (column < 0) return null;
    const raw = cells[row]![column];
    if (typeof raw === "number" && raw > 0 && raw < Infinity) return raw;
    if (isBlank(raw)) return null;
    const argument = argumentAt(row, column);
    const money = readMoney(raw, argument);
    if (!money.ok) return money.problem;
    if (money.value === null || money.value.amount === 0) return null;
    const given = showGiven(typeof raw === "string" ? raw : money.value.amount);
    if (money.value.amount < 0) return notUsable(argument, given, "an amount of 0 or more");
    const sign = money.value.currency;
    // A bare $, ¥ or kr belongs to several currencies and contradicts none of them.
    const contradicts = typeof currency === "string" && sign !== null && sign.length === 3 && sign !== currency;
    return contradicts
      ? notUsable(argument, given, `an amount in ${currency}, the currency of its row`)
      : money.value.amount;
  };

  const columns = {
    piece: columnFor("piece"),
    description: columnFor("description"),
    kind: columnFor("kind"),
    lender: columnFor("lender"),
    look: columnFor("look"),
    talent: columnFor("talent"),
    quantity: columnFor("quantity"),
    quantityBack: columnFor("quantityBack"),
    weight: columnFor("weight"),
    out: columnFor("out"),
    due: columnFor("due"),
    extendedTo: columnFor("extendedTo"),
    back: columnFor("back"),
    shoot: columnFor("shoot"),
    settled: columnFor("settled"),
  };
  const at = (index: number): PieceRow => {
    const row = dataRows[index]!;
    const currency = currencyAt(row);
    return {
      row,
      piece: textAt(row, columns.piece),
      description: textAt(row, columns.description),
      kind: textAt(row, columns.kind),
      lender: textAt(row, columns.lender),
      look: textAt(row, columns.look),
      talent: textAt(row, columns.talent),
      quantity: quantityAt(row, columns.quantity),
      quantityBack: quantityAt(row, columns.quantityBack),
      value: amountAt(row, valueColumn, currency),
      totalValue: amountAt(row, totalColumn, currency),
      currency,
      weight: weightAt(row),
      out: dayAt(row, columns.out),
      due: dayAt(row, columns.due),
      extendedTo: dayAt(row, columns.extendedTo),
      back: dayAt(row, columns.back),
      shoot: dayAt(row, columns.shoot),
      settled: settledAt(row),
    };
  };

  function weightAt(row: number): PieceRow["weight"] {
    if (columns.weight < 0) return null;
    const raw = cells[row]![columns.weight];
    if (isBlank(raw)) return null;
    const weight = fieldOf(readWeight(raw, argumentAt(row, columns.weight)), null);
    return weight !== null && "grams" in weight && (weight.grams ?? weight.bareAmount) === 0 ? null : weight;
  }
  function settledAt(row: number): PieceRow["settled"] {
    if (columns.settled < 0) return null;
    const raw = cells[row]![columns.settled];
    return isBlank(raw) ? null : readSettled(raw, argumentAt(row, columns.settled));
  }

  return { count: dataRows.length, at, hasCurrencies: currencyColumn >= 0 || signs.size > 1 };
}

function isBlank(raw: unknown): boolean {
  return raw === null || raw === undefined || raw === "" || raw === 0;
}

/** The value read, or its problem; what stands for blank (a 0 that arrived inside an object, too) is null. */
function fieldOf<T>(outcome: Outcome<T | null>, blank: T | null): FieldValue<T> {
  if (!outcome.ok) return outcome.problem;
  return outcome.value === blank ? null : outcome.value;
}

function notUsable(argument: string, given: string, expected: string): FieldValue<number> {
  const outcome = fail("argument-not-usable", { argument, given, expected });
  return outcome.ok ? null : outcome.problem;
}
