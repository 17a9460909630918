import type { SheetPort } from "../sheet/SheetPort";

/** What the pane is given by whichever host shows it; it knows nothing else of the world outside. */
export interface PaneHost {
  readonly port: SheetPort;
  /** The serial day of the host's clock. The pane reads no clock of its own. */
  readonly today: () => number;
  /** The time of day of the host's clock, as a fraction of the day, to mark "now" by. Left out, nothing is marked. */
  readonly now?: () => number;
  /**
   * Calls one of our worksheet functions with the arguments a cell would hand over, for a look at its result; throws as the
   * function does. Left out where the page does not hold the functions.
   */
  readonly callFunction?: (id: string, args: readonly unknown[]) => unknown;
}
