import type { FieldValue } from "../domain/fieldValue";

/** In what currency each row of a table has its amounts. */
export interface RowCurrencies {
  /** Whether amounts must be kept apart by currency: there is a Currency column, or amounts and headings name several. */
  readonly hasCurrencies: () => boolean;
  /** The currency of a row: its Currency cell, else what its amount says, else the one in use, else the heading's. */
  readonly at: (row: number) => FieldValue<string>;
}
