import type { WriteReceipt } from "../../sheet/cellEdit";
import type { OpenFinding } from "../check/OpenFinding";
import type { Notice } from "./Notice";
import type { ReadTables } from "./ReadTables";

/** The last step written, which can still be put back. */
interface LastStep {
  readonly receipt: WriteReceipt;
  readonly label: string;
  /** Whether it has been put back, so that it can be done again. */
  readonly isPutBack: boolean;
  /** Whether a reading has shown what the step wrote: one that began before it was written says nothing of it. */
  readonly isSeen: boolean;
}

/** Everything the frame and its views show, as one plain value. What a view alone needs stays in its own folder. */
export interface PaneState {
  readonly viewId: string;
  /** The day the figures are for, and the host's today, both serial days. */
  readonly asOf: number;
  readonly today: number;
  /** Whether the day was chosen by hand; otherwise it is the day the sheet says it counts for, or today. */
  readonly isDayChosen: boolean;
  /** null until the workbook has been read once; kept as it was when a later reading fails. */
  readonly read: ReadTables | null;
  /** null until the first check has ended. */
  readonly findings: readonly OpenFinding[] | null;
  /** What the findings were found in; `read` may be newer while the next check runs. */
  readonly checkedRead: ReadTables | null;
  /** Whether a reading or a check is under way. */
  readonly isReading: boolean;
  readonly notices: readonly Notice[];
  readonly nextNoticeId: number;
  readonly lastStep: LastStep | null;
  /** Texts kept inside the workbook, by key; a key not read yet is absent. */
  readonly kept: Readonly<Partial<Record<string, string | null>>>;
}
