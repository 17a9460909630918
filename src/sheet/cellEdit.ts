import type { BuildPlan } from "./buildPlan";
import type { Cell } from "./cell";
import type { CellPosition } from "./cellPosition";

/** One cell to write. */
export interface CellEdit {
  readonly at: CellPosition;
  /**
   * What the writer believes stands there now. A cell that holds anything else is not written and the
   * whole step is refused, so that a filled cell is never overwritten unasked.
   */
  readonly expected: Cell;
  /**
   * The formula (en-US, with =) believed to stand there. Given, it is compared instead of `expected`, since a
   * result may be recalculated without anybody typing. Left out, a cell with a formula counts as changed, so
   * that no formula is ever overwritten unasked.
   */
  readonly expectedFormula?: string;
  /** A value, or a formula (en-US, with =) in `formula`. */
  readonly value: Cell;
  readonly formula?: string;
  readonly numberFormat?: string;
}

/** What a step of writing changed, enough to put it back. */
export interface WriteReceipt {
  readonly label: string;
  readonly prior: readonly CellEdit[];
  /** What to build and take away to undo a step that built something; such a step has no prior cells. */
  readonly opposite?: BuildPlan;
}
