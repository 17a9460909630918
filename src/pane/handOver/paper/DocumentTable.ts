/** A text, a number or nothing. Dates and times are texts here: yyyy-mm-dd and hh:mm. */
export type DocumentCell = string | number | null;

/** Rows of a document as they stand on paper and in a file of values. */
export interface DocumentTable {
  readonly headings: readonly string[];
  /** Each as long as the headings. */
  readonly rows: readonly (readonly DocumentCell[])[];
}
