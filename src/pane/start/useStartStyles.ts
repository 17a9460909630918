import { makeStyles, tokens } from "@fluentui/react-components";

/** The look of Start: what is there, what may be added, and what will be done. */
export const useStartStyles = makeStyles({
  lead: { margin: 0, marginBottom: tokens.spacingVerticalS },
  heading: {
    margin: `${tokens.spacingVerticalL} 0 ${tokens.spacingVerticalXS}`,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  card: {
    marginTop: tokens.spacingVerticalS,
    padding: `${tokens.spacingVerticalXS} ${tokens.spacingHorizontalM}`,
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
    overflowWrap: "anywhere",
  },
  group: { margin: 0, padding: 0, border: "none", minWidth: 0 },
  legend: { padding: 0, fontWeight: tokens.fontWeightSemibold },
  note: { margin: `${tokens.spacingVerticalXS} 0`, color: tokens.colorNeutralForeground2, overflowWrap: "anywhere" },
  boxes: { display: "flex", flexWrap: "wrap", columnGap: tokens.spacingHorizontalS },
  panel: {
    marginTop: tokens.spacingVerticalM,
    padding: tokens.spacingHorizontalS,
    border: `1px solid ${tokens.colorBrandStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
    overflowWrap: "anywhere",
  },
  panelHeading: { margin: 0, fontSize: "inherit", fontWeight: tokens.fontWeightSemibold },
  list: { margin: `${tokens.spacingVerticalXS} 0`, paddingLeft: tokens.spacingHorizontalL },
  obstacle: { margin: `${tokens.spacingVerticalXS} 0`, color: tokens.colorStatusDangerForeground3 },
  actions: { display: "flex", flexWrap: "wrap", gap: tokens.spacingHorizontalXS, marginTop: tokens.spacingVerticalS },
  action: { minWidth: 0, minHeight: "24px", maxWidth: "100%", overflowWrap: "anywhere", textAlign: "left" },
});
