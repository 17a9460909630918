import { TableAddRegular } from "@fluentui/react-icons";
import type { PaneView } from "../frame/PaneView";
import { StartView } from "./StartView";

/** The tables to begin with. */
export const startPaneView: PaneView = {
  id: "start",
  label: "Start",
  Icon: TableAddRegular,
  View: StartView,
  keptKeys: [],
};
