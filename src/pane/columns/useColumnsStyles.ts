import { makeStyles, tokens } from "@fluentui/react-components";

/** The look of the Columns view: a card for each table, a line for each heading. */
export const useColumnsStyles = makeStyles({
  lead: { margin: 0, marginBottom: tokens.spacingVerticalS },
  card: {
    marginTop: tokens.spacingVerticalS,
    padding: `${tokens.spacingVerticalS} ${tokens.spacingHorizontalM}`,
    border: `1px solid ${tokens.colorNeutralStroke2}`,
    borderRadius: tokens.borderRadiusMedium,
    backgroundColor: tokens.colorNeutralBackground1,
    overflowWrap: "anywhere",
  },
  opener: { minHeight: "24px", cursor: "pointer", fontWeight: tokens.fontWeightSemibold },
  openerMore: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
  heading: {
    margin: `${tokens.spacingVerticalL} 0 0`,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  note: { margin: `${tokens.spacingVerticalXS} 0`, color: tokens.colorNeutralForeground2 },
  list: { listStyleType: "none", margin: 0, padding: 0 },
  line: {
    padding: `${tokens.spacingVerticalS} 0`,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    overflowWrap: "anywhere",
  },
  control: { minWidth: 0, width: "100%" },
  choices: {
    margin: `${tokens.spacingVerticalS} 0`,
    padding: tokens.spacingHorizontalS,
    border: `1px solid ${tokens.colorBrandStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    minWidth: 0,
  },
  legend: { padding: `0 ${tokens.spacingHorizontalXS}`, fontWeight: tokens.fontWeightSemibold },
  actions: { display: "flex", flexWrap: "wrap", gap: tokens.spacingHorizontalXS, marginTop: tokens.spacingVerticalXS },
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
  copy: { display: "flex", flexWrap: "wrap", alignItems: "end", gap: tokens.spacingHorizontalXS },
  copyField: { flexGrow: 1, minWidth: "140px" },
});
