import { MathFormulaRegular } from "@fluentui/react-icons";
import { columnsKey } from "../columns/columnsKey";
import type { PaneView } from "../frame/PaneView";
import { FunctionsView } from "./FunctionsView";

/** The functions, by what they answer. */
export const functionsPaneView: PaneView = {
  id: "functions",
  label: "Functions",
  Icon: MathFormulaRegular,
  View: FunctionsView,
  keptKeys: [columnsKey],
};
