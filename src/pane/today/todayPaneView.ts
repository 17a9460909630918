import { CalendarTodayRegular } from "@fluentui/react-icons";
import type { PaneView } from "../frame/PaneView";
import { callsKey } from "./callsKey";
import { coverKey } from "./coverKey";
import { TodayView } from "./TodayView";

/** The day at a glance. */
export const todayPaneView: PaneView = {
  id: "today",
  label: "Today",
  Icon: CalendarTodayRegular,
  View: TodayView,
  keptKeys: [coverKey, callsKey],
};
