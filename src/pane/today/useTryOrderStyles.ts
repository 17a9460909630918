import { makeStyles, tokens } from "@fluentui/react-components";

/** The look of the list in which an order is tried. */
export const useTryOrderStyles = makeStyles({
  root: { marginTop: tokens.spacingVerticalS },
  summary: { minHeight: "24px", cursor: "pointer", fontWeight: tokens.fontWeightSemibold },
  list: { listStyleType: "none", margin: `${tokens.spacingVerticalXS} 0`, padding: 0 },
  look: {
    display: "flex",
    alignItems: "center",
    columnGap: tokens.spacingHorizontalXS,
    padding: `${tokens.spacingVerticalXXS} 0`,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    cursor: "grab",
  },
  dragged: {
    backgroundColor: tokens.colorNeutralBackground1Hover,
    outline: `1px dashed ${tokens.colorNeutralStroke1}`,
  },
  name: { flexGrow: 1, minWidth: 0, overflowWrap: "anywhere" },
  time: { color: tokens.colorNeutralForeground2, fontVariantNumeric: "tabular-nums", whiteSpace: "nowrap" },
  mover: { minWidth: "28px", minHeight: "28px", flexShrink: 0 },
  result: { margin: `${tokens.spacingVerticalXS} 0` },
  actions: { display: "flex", flexWrap: "wrap", gap: tokens.spacingHorizontalXS },
  action: { minWidth: 0, minHeight: "24px" },
});
