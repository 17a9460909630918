import { mergeClasses } from "@fluentui/react-components";
import { useContext, useMemo, useRef } from "react";
import { Foot } from "./Foot";
import { paneContext } from "./paneContext";
import type { PaneView } from "./PaneView";
import { useFrameStyles } from "./useFrameStyles";

/** One view in its tab panel. While it is hidden it is left as it was, so that only the view in sight is worked out after an edit. */
export function ViewPanel({ view, isShown }: { readonly view: PaneView; readonly isShown: boolean }) {
  const styles = useFrameStyles();
  const pane = useContext(paneContext);
  const lastSeen = useRef(pane);
  if (isShown) lastSeen.current = pane;
  const { id, View } = view;
  const content = useMemo(() => <View />, [View]);
  const isRead = pane?.state.read !== null;
  return (
    <div
      role="tabpanel"
      id={`pane-view-${id}`}
      aria-labelledby={`pane-tab-${id}`}
      className={mergeClasses(styles.view, !isShown && styles.hidden)}
    >
      <paneContext.Provider value={lastSeen.current}>{isRead && content}</paneContext.Provider>
      <Foot />
    </div>
  );
}
