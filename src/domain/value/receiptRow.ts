import type { Terms } from "../dates/terms/terms";
import type { FieldValue } from "../fieldValue";

/**
 * One row of a receipts table, as read.
 *
 * A field is null where the cell is blank and where the sheet has no such column; it is a problem where the cell cannot
 * be read. Days are whole serial days; amounts are 0 or more, in the currency of the row.
 */
export interface ReceiptRow {
  /** Index of the row in the range as passed, from 0. */
  readonly row: number;
  readonly shop: FieldValue<string>;
  readonly job: FieldValue<string>;
  readonly bought: FieldValue<number>;
  readonly amount: FieldValue<number>;
  /** What is not going back: an amount, or yes (all that was not refunded) or no. */
  readonly kept: FieldValue<number | boolean>;
  readonly terms: FieldValue<Terms>;
  /** The day the money came back, or only that it did. */
  readonly refunded: FieldValue<number | boolean>;
  readonly amountRefunded: FieldValue<number>;
  readonly currency: FieldValue<string>;
}
