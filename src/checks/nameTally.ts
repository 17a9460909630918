import type { CheckedRow } from "./checkedRow";

/** One spelling of a name, with every row that has it. */
export interface NameTally {
  /** As typed, but for spaces around it and double ones in it. */
  readonly name: string;
  readonly key: string;
  /** In the order of the sheet; never empty. */
  readonly rows: readonly CheckedRow[];
}
