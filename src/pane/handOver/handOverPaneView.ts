import { DocumentArrowRightRegular } from "@fluentui/react-icons";
import { callsKey } from "../today/callsKey";
import { columnsKey } from "../columns/columnsKey";
import type { PaneView } from "../frame/PaneView";
import { calendarKey } from "./calendarKey";
import { HandOverView } from "./HandOverView";
import { jobKey } from "./job/jobKey";

/** Papers and files to give away. */
export const handOverPaneView: PaneView = {
  id: "hand-over",
  label: "Hand over",
  Icon: DocumentArrowRightRegular,
  View: HandOverView,
  keptKeys: [jobKey, calendarKey, callsKey, columnsKey],
};
