import { makeStyles, tokens } from "@fluentui/react-components";
import { paneStyle } from "../frame/paneStyle";

/** The look of the Columns view: a card for each table, a line for each heading. */
export const useColumnsStyles = makeStyles({
  lead: { margin: 0, marginBottom: tokens.spacingVerticalS },
  card: paneStyle.card,
  opener: paneStyle.opener,
  openerMore: { fontWeight: tokens.fontWeightRegular, color: tokens.colorNeutralForeground2 },
  heading: paneStyle.heading,
  note: paneStyle.note,
  list: paneStyle.list,
  line: {
    padding: `${tokens.spacingVerticalS} 0`,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    overflowWrap: "anywhere",
  },
  control: paneStyle.control,
  choices: {
    margin: `${tokens.spacingVerticalS} 0`,
    padding: tokens.spacingHorizontalS,
    border: `1px solid ${tokens.colorBrandStroke1}`,
    borderRadius: tokens.borderRadiusMedium,
    minWidth: 0,
  },
  legend: { padding: `0 ${tokens.spacingHorizontalXS}`, fontWeight: tokens.fontWeightSemibold },
  actions: paneStyle.actions,
  action: paneStyle.action,
  formula: paneStyle.formula,
  copy: { display: "flex", flexWrap: "wrap", alignItems: "end", gap: tokens.spacingHorizontalXS },
  copyField: { flexGrow: 1, minWidth: "140px" },
});
