import { fail } from "../domain/fail";
import type { FieldValue } from "../domain/fieldValue";
import { isOtherCurrency } from "../domain/value/isOtherCurrency";
import { showGiven } from "../domain/showGiven";
import { argumentAt } from "./argumentAt";
import { readMoney } from "./readMoney";
import type { RowCurrencies } from "./rowCurrencies";
import type { Table } from "./table";

/**
 * The amount in a cell of a table, in the currency of its row; blank, 0 and a column below 0 are null.
 *
 * Problems: as for readMoney, an amount below 0, and one whose own sign says another currency than its row.
 */
export function amountAt(table: Table, row: number, column: number, currencies: RowCurrencies): FieldValue<number> {
  if (column < 0) return null;
  const raw = table.cells[row]![column];
  if (typeof raw === "number" && raw > 0 && raw < Infinity) return raw;
  if (raw === null || raw === undefined || raw === 0 || raw === "") return null;
  const argument = argumentAt(table, row, column);
  const money = readMoney(raw, argument);
  if (!money.ok) return money.problem;
  if (money.value === null || money.value.amount === 0) return null;
  const { amount, currency: sign } = money.value;
  let expected = amount < 0 ? "an amount of 0 or more" : null;
  if (sign !== null) {
    const currency = currencies.at(row);
    if (typeof currency === "string" && isOtherCurrency(currency, sign))
      expected ??= `an amount in ${currency}, the currency of its row`;
  }
  if (expected === null) return amount;
  const given = showGiven(typeof raw === "string" ? raw : amount);
  const refused = fail("argument-not-usable", { argument, given, expected });
  return refused.ok ? null : refused.problem;
}
