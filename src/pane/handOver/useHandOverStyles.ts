import { makeStyles, tokens } from "@fluentui/react-components";
import { paneStyle } from "../frame/paneStyle";

/** The look of the Hand over view: what, for whom, what is missing, what to do with it, and the page itself. */
export const useHandOverStyles = makeStyles({
  choices: { display: "flex", flexDirection: "column", rowGap: tokens.spacingVerticalS },
  control: paneStyle.control,
  about: { margin: `${tokens.spacingVerticalXS} 0`, color: tokens.colorNeutralForeground2 },
  card: paneStyle.card,
  opener: paneStyle.opener,
  heading: paneStyle.heading,
  gapsHeading: { margin: 0, fontSize: tokens.fontSizeBase300, lineHeight: tokens.lineHeightBase300 },
  gaps: { margin: `${tokens.spacingVerticalXS} 0`, paddingLeft: tokens.spacingHorizontalL },
  actions: paneStyle.actions,
  action: paneStyle.action,
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
