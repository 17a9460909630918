import type { CheckedRow } from "./checkedRow";

/** A lender as listed in a lenders table. */
export interface ListedLender {
  readonly name: string;
  readonly row: CheckedRow;
}

/** The listed lenders, by the key that spellings share; the first row stands where a lender is listed twice. */
export type LenderBook = ReadonlyMap<string, ListedLender>;
