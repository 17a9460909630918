import type { FieldValue } from "../domain/fieldValue";
import type { Outcome } from "../domain/outcome";
import type { ReceiptRows } from "../domain/value/receiptRows";
import { amountAt } from "./amountAt";
import { argumentAt } from "./argumentAt";
import { dayAt } from "./dayAt";
import { readCurrencies } from "./readCurrencies";
import { readKept } from "./readKept";
import { readRefunded } from "./readRefunded";
import { readTerms } from "./readTerms";
import { ReceiptRowView, type ReceiptSource } from "./receiptRowView";
import type { Table } from "./table";
import { textAt } from "./textAt";

/**
 * The rows of a receipts table, each field read when it is asked for.
 *
 * A problem names the heading and the row, counted from 1 in the range as passed. Amounts below 0 are problems; a 0 is as
 * good as blank, as some hosts send blank cells so.
 */
export function readReceipts(table: Table): ReceiptRows {
  const { columnOf, dataRows } = table;
  const currencies = readCurrencies(table, ["amount", "kept", "amountRefunded"]);
  const column = (field: string): number => columnOf[field] ?? -1;
  const [shop, job, bought] = [column("shop"), column("job"), column("bought")];
  const [amount, amountRefunded] = [column("amount"), column("amountRefunded")];
  const keptColumn = column("kept");
  const keptAt = cellReader(table, keptColumn, readKept);
  const source: ReceiptSource = {
    shop: (row) => textAt(table, row, shop),
    job: (row) => textAt(table, row, job),
    bought: (row) => dayAt(table, row, bought),
    amount: (row) => amountAt(table, row, amount, currencies),
    kept: (row) => {
      const kept = keptAt(row);
      // An amount as text may name another currency than its row.
      const isText = typeof kept === "number" && typeof table.cells[row]![keptColumn] === "string";
      return isText ? (amountAt(table, row, keptColumn, currencies) ?? 0) : kept;
    },
    terms: cellReader(table, column("terms"), readTerms),
    refunded: cellReader(table, column("refunded"), readRefunded),
    amountRefunded: (row) => amountAt(table, row, amountRefunded, currencies),
    currency: (row) => currencies.at(row),
  };
  return {
    count: dataRows.length,
    at: (index) => new ReceiptRowView(source, dataRows[index]!),
    get hasCurrencies() {
      return currencies.hasCurrencies();
    },
  };
}

/** Reads the cells of a column. Terms and the like repeat down a sheet and cost more to read than all the rest of the row, so each text is read once. */
function cellReader<T>(
  table: Table,
  column: number,
  reader: (raw: unknown, argument: string) => Outcome<T | null>,
): (row: number) => FieldValue<T> {
  const known = new Map<unknown, T | null>();
  return (row) => {
    const raw = column < 0 ? null : table.cells[row]![column];
    if (raw === null || raw === undefined || raw === "") return null;
    const found = known.get(raw);
    if (found !== undefined) return found;
    const read = reader(raw, argumentAt(table, row, column));
    if (!read.ok) return read.problem;
    if (typeof raw !== "object") known.set(raw, read.value);
    return read.value;
  };
}
