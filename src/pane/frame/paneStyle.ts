import { tokens, type GriffelStyle } from "@fluentui/react-components";

/** What looks the same in every view; each takes what it needs into its own styles. */
export const paneStyle = {
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
    margin: `${tokens.spacingVerticalL} 0 0`,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  note: { margin: `${tokens.spacingVerticalXS} 0`, color: tokens.colorNeutralForeground2, overflowWrap: "anywhere" },
  list: { listStyleType: "none", margin: 0, padding: 0 },
  control: { minWidth: 0, width: "100%" },
  actions: { display: "flex", flexWrap: "wrap", gap: tokens.spacingHorizontalXS, marginTop: tokens.spacingVerticalS },
  action: { minWidth: 0, minHeight: "24px", maxWidth: "100%", overflowWrap: "anywhere", textAlign: "left" },
  formula: {
    display: "block",
    fontFamily: tokens.fontFamilyMonospace,
    backgroundColor: tokens.colorNeutralBackground3,
    borderRadius: tokens.borderRadiusSmall,
    padding: `0 ${tokens.spacingHorizontalXXS}`,
    overflowWrap: "anywhere",
    whiteSpace: "pre-wrap",
  },
} as const satisfies Readonly<Record<string, GriffelStyle>>;
