import { createRoot } from "react-dom/client";
import { clockContext } from "./frame/clockContext";
import { Pane } from "./frame/Pane";
import { paneViews } from "./frame/paneViews";
import type { PaneHost } from "./PaneHost";

/** Shows the pane inside an element, whose size it takes. Returns how to take it away again. */
export function mountPane(element: HTMLElement, host: PaneHost): { readonly unmount: () => void } {
  const root = createRoot(element);
  root.render(
    <clockContext.Provider value={host.now ?? null}>
      <Pane host={host} views={paneViews} />
    </clockContext.Provider>,
  );
  return { unmount: () => root.unmount() };
}
