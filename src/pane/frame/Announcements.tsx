import type { PaneView } from "./PaneView";
import { useFrameStyles } from "./useFrameStyles";
import { usePane } from "./usePane";

/**
 * What a screen reader is told without being asked: how many findings stand, and each message.
 *
 * The regions are always there and only their text changes, since a region that appears together with its text
 * is often not read; each has one subject, since a change has all of it read again.
 */
export function Announcements({ views }: { readonly views: readonly PaneView[] }) {
  const styles = useFrameStyles();
  const { state } = usePane();
  const notice = state.notices.at(-1)?.sentence ?? "";
  const step =
    state.lastStep === null ? "" : `${state.lastStep.isPutBack ? "Put back" : "Done"}: ${state.lastStep.label}.`;
  return (
    <>
      <div className={styles.unseen} role="status">
        {views.map(({ id, Standing }) => Standing !== undefined && <Standing key={id} />)}
      </div>
      <div className={styles.unseen} role="status">
        {step}
      </div>
      <div className={styles.unseen} role="alert">
        {notice}
      </div>
    </>
  );
}
