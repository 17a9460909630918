import type { ReceiptRow } from "./receiptRow";

/** The rows of a receipts table in sheet order, each read when it is asked for. */
export interface ReceiptRows {
  readonly count: number;
  /** The row at a place from 0 up to count; each call reads it anew. */
  readonly at: (index: number) => ReceiptRow;
  /** Whether amounts must be kept apart by currency. */
  readonly hasCurrencies: boolean;
}
