import { makeStyles, tokens } from "@fluentui/react-components";

const FORCED = "@media (forced-colors: active)";

/** The look of the day's picture: hollow, hatched and solid tell what is done without colour. */
export const useDayPictureStyles = makeStyles({
  picture: { display: "block", width: "100%", height: "auto", marginTop: tokens.spacingVerticalS },
  text: {
    fill: tokens.colorNeutralForeground2,
    fontSize: "11px",
    fontFamily: tokens.fontFamilyBase,
    [FORCED]: { fill: "CanvasText" },
  },
  number: {
    fill: tokens.colorNeutralForegroundOnBrand,
    fontSize: "9px",
    fontWeight: tokens.fontWeightSemibold,
    fontFamily: tokens.fontFamilyBase,
    [FORCED]: { fill: "Canvas", forcedColorAdjust: "none" },
  },
  bar: {
    stroke: tokens.colorBrandForeground1,
    strokeWidth: 1,
    [FORCED]: { stroke: "CanvasText" },
  },
  hollow: { fill: tokens.colorNeutralBackground1, [FORCED]: { fill: "Canvas" } },
  shot: { fill: tokens.colorBrandBackground, [FORCED]: { fill: "CanvasText" } },
  hatch: { stroke: tokens.colorBrandForeground1, strokeWidth: 1.6, [FORCED]: { stroke: "CanvasText" } },
  wait: {
    stroke: tokens.colorNeutralForeground2,
    strokeWidth: 1.5,
    strokeDasharray: "2 2",
    [FORCED]: { stroke: "CanvasText" },
  },
  meal: { fill: tokens.colorNeutralBackground4, [FORCED]: { fill: "none", stroke: "GrayText" } },
  hour: { stroke: tokens.colorNeutralStroke3, strokeWidth: 0.5, [FORCED]: { stroke: "GrayText" } },
  pointer: { stroke: tokens.colorNeutralForeground2, strokeWidth: 0.75, [FORCED]: { stroke: "CanvasText" } },
  axis: { stroke: tokens.colorNeutralStroke1, [FORCED]: { stroke: "CanvasText" } },
  wrap: {
    stroke: tokens.colorStatusDangerForeground1,
    strokeWidth: 2,
    [FORCED]: { stroke: "CanvasText" },
  },
  now: {
    stroke: tokens.colorNeutralForeground1,
    strokeWidth: 1.5,
    strokeDasharray: "5 3",
    [FORCED]: { stroke: "Highlight" },
  },
  legend: {
    display: "flex",
    flexWrap: "wrap",
    columnGap: tokens.spacingHorizontalM,
    margin: `${tokens.spacingVerticalXS} 0`,
    color: tokens.colorNeutralForeground2,
  },
  legendPart: { display: "inline-flex", alignItems: "center", columnGap: tokens.spacingHorizontalXS },
});
