import type { SheetPort } from "../sheet/SheetPort";

/** What the pane is given by whichever host shows it; it knows nothing else of the world outside. */
export interface PaneHost {
  readonly port: SheetPort;
  /** The serial day of the host's clock. The pane reads no clock of its own. */
  readonly today: () => number;
}
