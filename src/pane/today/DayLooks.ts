import type { Day } from "../../domain/day/day";
import type { Look } from "../../domain/day/look";
import type { PlannedDay } from "../../domain/day/plannedDay";
import type { CellPosition } from "../../sheet/cellPosition";
import type { CrewFound } from "../../sheet/crewFound";
import type { NotedFigure } from "../../sheet/notedFigure";
import type { SheetTable } from "../../sheet/sheetTable";

/** One look of the day as Today lists it, in shooting order. */
export interface LookLine {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly label: string;
  readonly talent: string;
  /** Whether the sheet says that it has been shot. */
  readonly isShot: boolean;
  /** null where no call is known. Times are fractions of a day. */
  readonly times: {
    readonly changeFrom: number;
    readonly readyBy: number;
    readonly shootFrom: number;
    readonly shootUntil: number;
    readonly minutesSpare: number;
    readonly waitsFor: string;
  } | null;
}

/** The looks of one day, as far as the workbook lets them be told. */
export interface DayLooks {
  /** Every day that has looks, soonest first; empty where the looks carry no date. */
  readonly days: readonly number[];
  /** The day shown; null where the looks carry no date. */
  readonly day: number | null;
  readonly lines: readonly LookLine[];
  /** Fraction of a day, said by the workbook or typed into the pane; null where neither. */
  readonly call: number | null;
  /** The cell that says it; null where it was typed into the pane, or nowhere. */
  readonly callPlace: NotedFigure | null;
  readonly wrap: NotedFigure | null;
  readonly crew: CrewFound;
  /** The looks as the sheet has them, with all that their plan is made from; null where no call is known. */
  readonly given: { readonly table: SheetTable; readonly day: Day; readonly looks: readonly Look[] } | null;
  /** The plan behind the times; null where no call is known. */
  readonly plan: PlannedDay | null;
  /** Minutes from the last shot to wrap, below 0 when over; null where either is not known. */
  readonly minutesSpareAtWrap: number | null;
  /** Why the looks or their times cannot be told. */
  readonly sentence: string | null;
}
