import type { Cell } from "../../sheet/cell";

/** What a cell of the saved file must hold. */
export interface WantedCell {
  readonly row: number;
  readonly column: number;
  /** What stands there or what the formula gives; null is blank. */
  readonly value: Cell;
  /** As the file keeps it, without =. */
  readonly formula: string | null;
  /** The area the formula spills over, itself counted; null for a formula of one cell. */
  readonly spill: string | null;
  /** The format by its number in the file, or null to keep what the cell has. */
  readonly format: number | null;
}
