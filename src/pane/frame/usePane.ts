import { useContext } from "react";
import { paneContext } from "./paneContext";

/** The pane a component stands in. */
export function usePane() {
  const pane = useContext(paneContext);
  if (pane === null) throw new Error("A view stands only inside the pane.");
  return pane;
}
