import type { IWorksheetData } from "@univerjs/core";
import type { ColumnState } from "./columnPatch";
import type { Freeze } from "./freezePatch";
import type { SavingFilter, SavingFilterColumn } from "./SavingFilter";
import type { SavingFormat } from "./SavingFormat";
import type { SheetState } from "./sheetState";
import type { StructureEdit } from "./structureEdit";

/** One table of the grid: its area as a reference, heading row included, and the headings as they stand. */
export interface SavingTable {
  readonly name: string;
  readonly reference: string;
  readonly headings: readonly string[];
  readonly filters: readonly SavingFilterColumn[];
}

/** Cells that offer a list to choose from. */
export interface SavingList {
  readonly reference: string;
  /** "yes,no" is the list itself, "=Lenders!$A$2:$A$500" where it stands. */
  readonly source: string;
  /** Whether anything that is not in the list is refused. */
  readonly isStrict: boolean;
}

/** One sheet of the grid as saving sees it. */
export interface SavingSheet {
  readonly sheetId: string;
  readonly name: string;
  readonly hidden: boolean;
  readonly state: SheetState;
  readonly rowData: IWorksheetData["rowData"];
  readonly columns: ReadonlyMap<number, ColumnState>;
  readonly freeze: Freeze;
  readonly merges: readonly string[];
  readonly tables: readonly SavingTable[];
  readonly lists: readonly SavingList[];
  readonly formats: readonly SavingFormat[];
  /** The sheet's own filter; those of its tables stand with them. */
  readonly filter: SavingFilter | null;
  /** The rows that filters hide, be it the sheet's own or a table's. */
  readonly filteredRows: ReadonlySet<number>;
}

/** All that saving needs of the grid, so that it can be tested without one. */
export interface SavingBook {
  readonly sheets: readonly SavingSheet[];
  readonly activeSheet: number;
  readonly structure: readonly StructureEdit[];
  readonly kept: ReadonlyMap<string, string>;
}
