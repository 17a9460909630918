import type { NotedCell } from "../../sheet/notedCell";

/** How much is covered, and the cell that says so; null where it was set in the pane. */
export interface CoverFigure {
  readonly amount: number;
  readonly place: NotedCell | null;
}

/** The cover of one currency, day by day. */
export interface Cover {
  /** For every day without a cover of its own. */
  readonly everyDay: CoverFigure | null;
  readonly byDay: ReadonlyMap<number, CoverFigure>;
}
