import type { CheckedRow } from "./checkedRow";

/** A look as the looks tables list it. */
interface ListedLook {
  readonly name: string;
  /** In the order of the sheet; several where each day numbers its looks anew. Never empty. */
  readonly rows: readonly CheckedRow[];
}

/** The listed looks by their key. */
export type LookBook = ReadonlyMap<string, ListedLook>;
