import { CheckmarkCircleRegular } from "@fluentui/react-icons";
import type { PaneView } from "../frame/PaneView";
import { CheckView } from "./CheckView";
import { ignoredKey } from "./ignoredKey";
import { OpenCount } from "./OpenCount";
import { OpenStanding } from "./OpenStanding";

/** The sheet check. */
export const checkPaneView: PaneView = {
  id: "check",
  label: "Check",
  Icon: CheckmarkCircleRegular,
  View: CheckView,
  Count: OpenCount,
  Standing: OpenStanding,
  keptKeys: [ignoredKey],
};
