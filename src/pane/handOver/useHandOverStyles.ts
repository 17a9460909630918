import { makeStyles, tokens } from "@fluentui/react-components";

/** The look of the Hand over view: what, for whom, what is missing, what to do with it, and the page itself. */
export const useHandOverStyles = makeStyles({
  choices: { display: "flex", flexDirection: "column", rowGap: tokens.spacingVerticalS },
  control: { minWidth: 0, width: "100%" },
  about: { margin: `${tokens.spacingVerticalXS} 0`, color: tokens.colorNeutralForeground2 },
  card: {
    marginTop: tokens.spacingVerticalS,
    padding: `${tokens.spacingVerticalS} ${tokens.spacingHorizontalM}`,
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
    overflowWrap: "anywhere",
  },
  opener: { minHeight: "24px", cursor: "pointer", fontWeight: tokens.fontWeightSemibold },
  heading: {
    margin: `${tokens.spacingVerticalM} 0 0`,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  gapsHeading: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  gaps: { margin: `${tokens.spacingVerticalXS} 0`, paddingLeft: tokens.spacingHorizontalL },
  actions: {
    display: "flex",
    flexWrap: "wrap",
    gap: tokens.spacingHorizontalXS,
    marginTop: tokens.spacingVerticalS,
  },
  action: { minWidth: 0, minHeight: "24px", maxWidth: "100%", overflowWrap: "anywhere", textAlign: "left" },
  page: {
    display: "block",
    boxSizing: "border-box",
    width: "100%",
    height: "440px",
    marginTop: tokens.spacingVerticalS,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    backgroundColor: "#fff",
    resize: "vertical",
  },
});
