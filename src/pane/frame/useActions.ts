import { useContext } from "react";
import { actionsContext } from "./actionsContext";

/** What a component that shows nothing of the pane's state can ask of the pane. */
export function useActions() {
  const actions = useContext(actionsContext);
  if (actions === null) throw new Error("A view stands only inside the pane.");
  return actions;
}
