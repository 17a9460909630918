import type { PaneView } from "./PaneView";
import { useFrameStyles } from "./useFrameStyles";
import { usePane } from "./usePane";

/**
 * What a screen reader is told without being asked: how many findings stand, and each message.
 *
 * Both regions are always there and only their text changes, since a region that appears together with its
 * text is often not read.
 */
export function Announcements({ views }: { readonly views: readonly PaneView[] }) {
  const styles = useFrameStyles();
  const { state } = usePane();
  const notice = state.notices.at(-1)?.sentence ?? "";
  const step = state.lastStep === null ? "" : `${state.lastStep.isPutBack ? "Put back" : "Done"}: ${state.lastStep.label}.`;
  return (
    <>
      <div className={styles.unseen} role="status">
        {step} {views.map(({ id, Standing }) => Standing !== undefined && <Standing key={id} />)}
      </div>
      <div className={styles.unseen} role="alert">
        {notice}
      </div>
    </>
  );
}
