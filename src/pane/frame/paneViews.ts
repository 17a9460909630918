import { checkPaneView } from "../check/checkPaneView";
import { columnsPaneView } from "../columns/columnsPaneView";
import { functionsPaneView } from "../functions/functionsPaneView";
import { handOverPaneView } from "../handOver/handOverPaneView";
import { startPaneView } from "../start/startPaneView";
import { todayPaneView } from "../today/todayPaneView";
import type { PaneView } from "./PaneView";

/** The views of the pane, in the order of their tabs. */
export const paneViews: readonly PaneView[] = [
  todayPaneView,
  checkPaneView,
  columnsPaneView,
  functionsPaneView,
  handOverPaneView,
  startPaneView,
];
