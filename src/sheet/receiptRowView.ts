import type { ReceiptRow } from "../domain/value/receiptRow";

/** Reads each field of a row of a receipts table. */
export type ReceiptSource = {
  readonly [Field in Exclude<keyof ReceiptRow, "row">]: (row: number) => ReceiptRow[Field];
};

/**
 * One row of a receipts table, each field read from its cell when it is asked for.
 *
 * A class, as pieceRowView is one: most receipts are settled, and of those most cells are never read.
 */
export class ReceiptRowView implements ReceiptRow {
  constructor(
    private readonly source: ReceiptSource,
    readonly row: number,
  ) {}

  get shop(): ReceiptRow["shop"] {
    return this.source.shop(this.row);
  }
  get job(): ReceiptRow["job"] {
    return this.source.job(this.row);
  }
  get bought(): ReceiptRow["bought"] {
    return this.source.bought(this.row);
  }
  get amount(): ReceiptRow["amount"] {
    return this.source.amount(this.row);
  }
  get kept(): ReceiptRow["kept"] {
    return this.source.kept(this.row);
  }
  get terms(): ReceiptRow["terms"] {
    return this.source.terms(this.row);
  }
  get refunded(): ReceiptRow["refunded"] {
    return this.source.refunded(this.row);
  }
  get amountRefunded(): ReceiptRow["amountRefunded"] {
    return this.source.amountRefunded(this.row);
  }
  get currency(): ReceiptRow["currency"] {
    return this.source.currency(this.row);
  }
}
