import type { BuildPlan } from "../../sheet/buildPlan";
import type { CellArea } from "../../sheet/cellArea";
import type { CellEdit } from "../../sheet/cellEdit";
import type { CellPosition } from "../../sheet/cellPosition";
import type { SheetPort } from "../../sheet/SheetPort";
import type { PaneHost } from "../PaneHost";

/** What a view can ask the frame to do. Problems are shown by the frame; the boolean only says whether it was done. */
export interface PaneActions {
  readonly chooseView: (viewId: string) => void;
  readonly chooseDay: (asOf: number) => void;
  /** Counts again for the day the sheet says, or today. */
  readonly followDay: () => void;
  readonly goTo: (at: CellPosition) => Promise<boolean>;
  /** The active cell, or null where the host does not tell it. */
  readonly activeCell: () => Promise<CellPosition | null>;
  /** The selected block of cells, or null where the host does not tell it. */
  readonly selection: () => Promise<CellArea | null>;
  /** The workbook's pictures, see SheetPort. What goes wrong is told to whoever asks, since much else can be shown without them. */
  readonly listPictures: SheetPort["listPictures"];
  readonly showPictures: SheetPort["showPictures"];
  /** Looks at what one of our functions gives, see PaneHost; undefined where this page cannot. */
  readonly callFunction: PaneHost["callFunction"];
  /** Writes as one step and offers to put it back. */
  readonly write: (label: string, edits: readonly CellEdit[]) => Promise<boolean>;
  /** Adds sheets or columns as one step and offers to take them away again. */
  readonly build: (label: string, plan: BuildPlan) => Promise<boolean>;
  /** Puts the last step back, or does it again. */
  readonly putBack: () => Promise<boolean>;
  readonly dismissRestore: () => void;
  /** Keeps a text inside the workbook. */
  readonly keep: (key: string, text: string) => Promise<boolean>;
  readonly readAgain: () => void;
  readonly dismissNotice: (id: number) => void;
}
