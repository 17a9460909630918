import { makeStyles, tokens } from "@fluentui/react-components";
import { paneStyle } from "../frame/paneStyle";

/** The look of Start: what is there, what may be added, and what will be done. */
export const useStartStyles = makeStyles({
  lead: { margin: 0, marginBottom: tokens.spacingVerticalS },
  heading: paneStyle.heading,
  card: paneStyle.card,
  group: { margin: 0, padding: 0, border: "none", minWidth: 0 },
  legend: { padding: 0, fontWeight: tokens.fontWeightSemibold },
  note: paneStyle.note,
  boxes: { display: "flex", flexWrap: "wrap", columnGap: tokens.spacingHorizontalS },
  list: { margin: `${tokens.spacingVerticalXS} 0`, paddingLeft: tokens.spacingHorizontalL },
  obstacle: { margin: `${tokens.spacingVerticalXS} 0`, color: tokens.colorStatusDangerForeground3 },
  actions: paneStyle.actions,
  action: paneStyle.action,
});
