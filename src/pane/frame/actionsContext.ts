import { createContext } from "react";
import type { PaneActions } from "./PaneActions";

/** What can be asked of the pane, apart from its state: whoever only asks is not drawn again when the state changes. */
export const actionsContext = createContext<PaneActions | null>(null);
