import type { SavingFilter, SavingFilterColumn } from "../save/SavingFilter";

/** The filters of one sheet that the grid was given when the file was opened. */
export interface OpenedFilters {
  readonly filter: SavingFilter | null;
  /** By the table's name as formulas use it. */
  readonly ofTables: ReadonlyMap<string, readonly SavingFilterColumn[]>;
  /** The rows that these filters hide. */
  readonly rows: ReadonlySet<number>;
}
