import type { ReceiptRow } from "../../../src/domain/value/receiptRow";

const BLANK: ReceiptRow = {
  row: 1,
  shop: null,
  job: null,
  bought: null,
  amount: null,
  kept: null,
  terms: null,
  refunded: null,
  amountRefunded: null,
  currency: null,
};

/** A receipt with every field blank but those given. */
export function receiptRowOf(fields: Partial<ReceiptRow>): ReceiptRow {
  return { ...BLANK, ...fields };
}
