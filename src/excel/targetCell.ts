import type { Cell } from "../sheet/cell";
import type { CellEdit } from "../sheet/cellEdit";
import type { CellPosition } from "../sheet/cellPosition";

/** A cell of a step as it stands before the writing. */
export interface TargetCell {
  readonly at: CellPosition;
  readonly edit: CellEdit;
  readonly value: Cell;
  readonly formula: string | null;
  readonly numberFormat: string;
}
