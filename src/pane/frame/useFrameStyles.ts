import { makeStyles, tokens } from "@fluentui/react-components";

/** The look of the frame: tabs above, one view below, messages between them. */
export const useFrameStyles = makeStyles({
  root: {
    display: "flex",
    flexDirection: "column",
    height: "100%",
    minWidth: 0,
    backgroundColor: tokens.colorNeutralBackground2,
    color: tokens.colorNeutralForeground1,
    // Where hardly any height is left, as at a zoom of 200 %, everything scrolls together.
    "@media (max-height: 420px)": { overflowY: "auto", overflowAnchor: "none", scrollPaddingTop: "42vh" },
  },
  head: {
    flexShrink: 0,
    backgroundColor: tokens.colorNeutralBackground1,
    borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
  },
  tabs: { flexWrap: "wrap" },
  messages: {
    flexShrink: 0,
    // In sight also where everything scrolls together.
    position: "sticky",
    top: 0,
    zIndex: 1,
    display: "flex",
    flexDirection: "column",
    rowGap: tokens.spacingVerticalXS,
    maxHeight: "40vh",
    overflowY: "auto",
  },
  main: {
    flexGrow: 1,
    minHeight: 0,
    display: "flex",
    flexDirection: "column",
    "@media (max-height: 420px)": { flexShrink: 0 },
  },
  view: {
    flexGrow: 1,
    minHeight: 0,
    overflowY: "auto",
    overflowX: "hidden",
    // The view itself keeps the place while its list changes.
    overflowAnchor: "none",
    padding: tokens.spacingHorizontalM,
    "@media (max-height: 420px)": { overflowX: "visible", overflowY: "visible" },
  },
  hidden: { display: "none" },
  unseen: {
    position: "absolute",
    width: "1px",
    height: "1px",
    overflow: "hidden",
    clipPath: "inset(50%)",
    whiteSpace: "nowrap",
  },
  foot: {
    marginTop: tokens.spacingVerticalL,
    paddingTop: tokens.spacingVerticalS,
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
});
