import { TableSimpleRegular } from "@fluentui/react-icons";
import type { PaneView } from "../frame/PaneView";
import { columnsKey } from "./columnsKey";
import { ColumnsView } from "./ColumnsView";

/** How the headings are read. */
export const columnsPaneView: PaneView = {
  id: "columns",
  label: "Columns",
  Icon: TableSimpleRegular,
  View: ColumnsView,
  keptKeys: [columnsKey],
};
