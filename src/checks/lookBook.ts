import type { CheckedRow } from "./checkedRow";

/** A look as listed in a looks table. */
export interface ListedLook {
  readonly name: string;
  readonly row: CheckedRow;
}

/** The listed looks by their key; the first row stands where a look is listed twice. */
export type LookBook = ReadonlyMap<string, ListedLook>;
