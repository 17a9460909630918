import type { Cell } from "../sheet/cell";
import type { CellEdit } from "../sheet/cellEdit";
import type { CellPosition } from "../sheet/cellPosition";

/** error: a figure will be wrong. warning: probably a slip. note: worth a look. */
export type Severity = "error" | "warning" | "note";

/** Something the pane can write to mend a finding. */
export interface Repair {
  /** What it does, said before it is done: 'Make it the date 2026-03-05'. */
  readonly label: string;
  readonly edits: readonly CellEdit[];
}

/** One thing the sheet check found, at one cell. */
export interface Finding {
  readonly ruleId: string;
  readonly messageId: string;
  readonly severity: Severity;
  readonly at: CellPosition;
  readonly sheetName: string;
  /** The column's heading as typed. */
  readonly heading: string;
  /** What the cell holds. */
  readonly raw: Cell;
  /** The facts of the message; also what tests compare. */
  readonly data: Readonly<Record<string, string | number>>;
  /** The sentence, made from the rule's message and data. */
  readonly message: string;
  /** Why it matters, one sentence of the rule's. */
  readonly why: string;
  /** Present only where the meaning surely stays the same. */
  readonly fix?: Repair;
  /** Where the meaning may change: the user chooses. */
  readonly suggestions: readonly Repair[];
}
