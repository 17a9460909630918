import type { Terms } from "../domain/dates/terms/terms";
import type { FieldValue } from "../domain/fieldValue";
import type { Outcome } from "../domain/outcome";
import type { ReceiptRow } from "../domain/value/receiptRow";
import type { ReceiptRows } from "../domain/value/receiptRows";
import { amountAt } from "./amountAt";
import { argumentAt } from "./argumentAt";
import { dayAt } from "./dayAt";
import { readCurrencies } from "./readCurrencies";
import { readKept } from "./readKept";
import { readRefunded } from "./readRefunded";
import { readTerms } from "./readTerms";
import type { Table } from "./table";
import { textAt } from "./textAt";

const MONEY = ["amount", "kept", "amountRefunded"];

/**
 * The rows of a receipts table, each read when it is asked for.
 *
 * A problem names the heading and the row, counted from 1 in the range as passed. Amounts below 0 are problems; a 0 is as
 * good as blank, as some hosts send blank cells so.
 */
export function readReceipts(table: Table): ReceiptRows {
  const { cells, columnOf, dataRows } = table;
  const currencies = readCurrencies(table, MONEY);
  const column = (field: string): number => columnOf[field] ?? -1;
  const [shop, job, bought, amount] = [column("shop"), column("job"), column("bought"), column("amount")];
  const [kept, terms, refunded] = [column("kept"), column("terms"), column("refunded")];
  const amountRefunded = column("amountRefunded");
  // Shops repeat down a sheet, and reading terms costs more than all the rest of the row.
  const termsOf = new Map<string, FieldValue<Terms>>();
  const termsAt = (row: number): FieldValue<Terms> => {
    const raw = terms < 0 ? null : cells[row]![terms];
    if (raw === null || raw === undefined || raw === "") return null;
    let known = typeof raw === "string" ? termsOf.get(raw) : undefined;
    if (known === undefined) {
      known = valueOf(readTerms(raw, argumentAt(table, row, terms)));
      if (typeof raw === "string" && (known === null || "kind" in known)) termsOf.set(raw, known);
    }
    return known;
  };
  const read = <T>(row: number, at: number, reader: (raw: unknown, argument: string) => Outcome<T | null>) => {
    const raw = at < 0 ? null : cells[row]![at];
    return raw === null || raw === undefined || raw === "" ? null : valueOf(reader(raw, argumentAt(table, row, at)));
  };
  return {
    count: dataRows.length,
    at: (index): ReceiptRow => {
      const row = dataRows[index]!;
      return {
        row,
        shop: textAt(table, row, shop),
        job: textAt(table, row, job),
        bought: dayAt(table, row, bought),
        amount: amountAt(table, row, amount, currencies),
        kept: read(row, kept, readKept),
        terms: termsAt(row),
        refunded: read(row, refunded, readRefunded),
        amountRefunded: amountAt(table, row, amountRefunded, currencies),
        currency: currencies.at(row),
      };
    },
    get hasCurrencies() {
      return currencies.hasCurrencies();
    },
  };
}

function valueOf<T>(outcome: Outcome<T | null>): FieldValue<T> {
  return outcome.ok ? outcome.value : outcome.problem;
}
