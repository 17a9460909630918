import type { Outcome } from "../domain/outcome";
import type { CellEdit, WriteReceipt } from "./cellEdit";
import type { BuildPlan } from "./buildPlan";
import type { CellArea } from "./cellArea";
import type { CellPosition } from "./cellPosition";
import type { SheetPicture } from "./SheetPicture";
import type { SheetSnapshot, WorkbookSnapshot } from "./sheetSnapshot";

/** What changed in the workbook: the area on one sheet, or null when only the sheet is known. */
export interface SheetChange {
  readonly sheetId: string;
  readonly area: {
    readonly row: number;
    readonly column: number;
    readonly rowCount: number;
    readonly columnCount: number;
  } | null;
  /** True for a sheet that was added, renamed, hidden or deleted, so that the whole workbook is read again. */
  readonly sheetsChanged: boolean;
}

/**
 * What the pane needs of a workbook, whichever host holds it.
 *
 * Every call that can fail for a reason a user can mend resolves to an Outcome with one sentence; no call rejects.
 */
export interface SheetPort {
  /** Reads every sheet's used range in one round trip. */
  readWorkbook(): Promise<Outcome<WorkbookSnapshot>>;
  /** Reads one sheet's used range in one round trip. */
  readSheet(sheetId: string): Promise<Outcome<SheetSnapshot>>;
  /**
   * The pictures of all sheets, by the cell each belongs to; what they show is asked for apart, since it may be large.
   * Pictures that lie over a sheet are told by every host, those that stand within a cell only where it lets us see them.
   */
  listPictures(): Promise<Outcome<readonly SheetPicture[]>>;
  /**
   * What pictures show, as data addresses (PNG, JPEG, GIF, WebP or BMP) by key, as near as the host gives it; one that is
   * gone, or of a kind that no browser shows, is left out.
   */
  showPictures(keys: readonly string[]): Promise<Outcome<ReadonlyMap<string, string>>>;
  /** Shows the cell and selects it. */
  goTo(at: CellPosition): Promise<Outcome<void>>;
  activeCell(): Promise<Outcome<CellPosition>>;
  /** The block of cells the user has selected. */
  selection(): Promise<Outcome<CellArea>>;
  /**
   * Writes all the edits as one step (one undo where the host allows), or none: refused when a cell no
   * longer holds what was expected, when the sheet is gone, or when it is protected.
   */
  write(label: string, edits: readonly CellEdit[]): Promise<Outcome<WriteReceipt>>;
  /**
   * Adds and takes away sheets and columns as one step, or nothing of it: refused as refusePlan says. Putting it back
   * takes away what was added, refused where somebody has typed there since.
   */
  build(label: string, plan: BuildPlan): Promise<Outcome<WriteReceipt>>;
  /** Puts back what a step changed; refused, cell by cell named, where somebody has typed since. */
  restore(receipt: WriteReceipt): Promise<Outcome<WriteReceipt>>;
  /** Text kept inside the workbook under a key, or null. */
  readKept(key: string): Promise<Outcome<string | null>>;
  writeKept(key: string, text: string): Promise<Outcome<void>>;
  /** Calls back after edits and recalculations, already gathered (debounced by the host side, about 150 ms). Returns how to stop. */
  onChange(listener: (changes: readonly SheetChange[]) => void): () => void;
}
