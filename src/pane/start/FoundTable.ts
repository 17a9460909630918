import type { CellPosition } from "../../sheet/cellPosition";
import type { SheetTable } from "../../sheet/sheetTable";
import type { StartColumn, StartTable } from "./StartTable";

/** How a table to begin with stands to the workbook. */
export interface FoundTable {
  readonly start: StartTable;
  /** The table that is there already (of several the largest), or null. */
  readonly table: SheetTable | null;
  /** Where it stands, also where it is no table of a kind; null where there is none. */
  readonly place: { readonly at: CellPosition; readonly sheetName: string } | null;
  /** What it lacks; empty where there is no table of a kind. */
  readonly missing: readonly StartColumn[];
}
