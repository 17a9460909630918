import { Button, FluentProvider, Spinner } from "@fluentui/react-components";
import { useCallback, useMemo, useReducer, useRef, useState } from "react";
import type { PaneHost } from "../PaneHost";
import { initialPaneState } from "../state/initialPaneState";
import { paneReducer } from "../state/paneReducer";
import { actionsContext } from "./actionsContext";
import { Announcements } from "./Announcements";
import { Messages } from "./Messages";
import { paneContext } from "./paneContext";
import { paneTheme } from "./paneTheme";
import { PaneTabs } from "./PaneTabs";
import type { PaneView } from "./PaneView";
import { useColourTheme } from "./useColourTheme";
import { useFollowedWorkbook } from "./useFollowedWorkbook";
import { useFrameStyles } from "./useFrameStyles";
import { usePaneActions } from "./usePaneActions";
import { ViewPanel } from "./ViewPanel";

/** The pane: its tabs, its messages, and the views that have been looked at so far. */
export function Pane({ host, views }: { readonly host: PaneHost; readonly views: readonly PaneView[] }) {
  const styles = useFrameStyles();
  const theme = useColourTheme();
  const [state, dispatch] = useReducer(paneReducer, null, () => initialPaneState(views[0]?.id ?? "", host.today()));
  const latest = useRef(state);
  latest.current = state;
  const keptKeys = useMemo(() => [...new Set(views.flatMap((view) => view.keptKeys))], [views]);
  const follower = useFollowedWorkbook(host, state.asOf, keptKeys, dispatch);
  const actions = usePaneActions(host, dispatch, latest, follower);
  const pane = useMemo(() => ({ state, actions }), [state, actions]);
  const [seen, setSeen] = useState<readonly string[]>([state.viewId]);

  const choose = useCallback(
    (viewId: string): void => {
      setSeen((before) => (before.includes(viewId) ? before : [...before, viewId]));
      actions.chooseView(viewId);
    },
    [actions],
  );

  return (
    <FluentProvider theme={paneTheme[theme]} className={styles.root}>
      <actionsContext.Provider value={actions}>
        <paneContext.Provider value={pane}>
          <header className={styles.head}>
            <h1 className={styles.unseen}>Tackstitch</h1>
            <PaneTabs views={views} shownId={state.viewId} onChoose={choose} />
          </header>
          <Messages />
          <main className={styles.main}>
            {state.read === null && state.isReading && <Spinner label="Reading the workbook" />}
            {state.read === null && !state.isReading && <Button onClick={actions.readAgain}>Read the workbook</Button>}
            {views
              .filter(({ id }) => seen.includes(id))
              .map((view) => (
                <ViewPanel key={view.id} view={view} isShown={view.id === state.viewId} />
              ))}
          </main>
          <Announcements views={views} />
        </paneContext.Provider>
      </actionsContext.Provider>
    </FluentProvider>
  );
}
