import { createContext } from "react";
import type { PaneState } from "../state/PaneState";
import type { PaneActions } from "./PaneActions";

/** What every view reads: the state of the pane, and what can be asked of it. */
export const paneContext = createContext<{ readonly state: PaneState; readonly actions: PaneActions } | null>(null);
