import { createDarkTheme, createLightTheme } from "@fluentui/react-components";
import type { BrandVariants, Theme } from "@fluentui/react-components";

/** Petrol, from nearly black to nearly white. White text on step 80 has a contrast of 5 to 1. */
const petrol: BrandVariants = {
  10: "#021313",
  20: "#062424",
  30: "#08393a",
  40: "#0a4a4b",
  50: "#0c5758",
  60: "#0d6364",
  70: "#0e7071",
  80: "#157a7b",
  90: "#3a8f90",
  100: "#57a3a3",
  110: "#74b6b6",
  120: "#8ec7c7",
  130: "#a9d6d6",
  140: "#c2e4e4",
  150: "#d8f0f0",
  160: "#ecf9f9",
};

/** The colours of the pane by day and by night. In forced colours the system's own stand in for them. */
export const paneTheme: { readonly light: Theme; readonly dark: Theme } = {
  light: createLightTheme(petrol),
  // On a dark ground the middle steps are too dark for text.
  dark: { ...createDarkTheme(petrol), colorBrandForeground1: petrol[120], colorBrandForeground2: petrol[130] },
};
