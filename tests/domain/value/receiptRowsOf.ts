import type { ReceiptRow } from "../../../src/domain/value/receiptRow";
import type { ReceiptRows } from "../../../src/domain/value/receiptRows";
import { receiptRowOf } from "./receiptRowOf";

/** Receipts as a table would give them, numbered from 1 as under a heading row. */
export function receiptRowsOf(rows: readonly Partial<ReceiptRow>[], hasCurrencies = false): ReceiptRows {
  const filled = rows.map((fields, index) => receiptRowOf({ row: index + 1, ...fields }));
  return { count: filled.length, at: (index) => filled[index]!, hasCurrencies };
}
