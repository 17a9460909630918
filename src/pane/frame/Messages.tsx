import { Button, MessageBar, MessageBarActions, MessageBarBody } from "@fluentui/react-components";
import { DismissRegular } from "@fluentui/react-icons";
import { useFrameStyles } from "./useFrameStyles";
import { usePane } from "./usePane";

/** What could not be done, and the last step written with the offer to put it back. */
export function Messages() {
  const styles = useFrameStyles();
  const { state, actions } = usePane();
  const { notices, lastStep } = state;
  if (notices.length === 0 && lastStep === null) return null;
  return (
    <section aria-label="Messages" className={styles.messages}>
      {notices.map((notice) => (
        <MessageBar key={notice.id} layout="multiline" intent={notice.kind === "problem" ? "warning" : "success"}>
          <MessageBarBody>{notice.sentence}</MessageBarBody>
          <MessageBarActions
            containerAction={
              <Button
                appearance="transparent"
                size="small"
                icon={<DismissRegular />}
                aria-label="Close this message"
                onClick={() => actions.dismissNotice(notice.id)}
              />
            }
          />
        </MessageBar>
      ))}
      {lastStep !== null && (
        <MessageBar layout="multiline" intent="success">
          <MessageBarBody>
            {lastStep.isPutBack ? "Put back as it was: " : "Done: "}
            {lastStep.label}
          </MessageBarBody>
          <MessageBarActions
            containerAction={
              <Button
                appearance="transparent"
                size="small"
                icon={<DismissRegular />}
                aria-label="Close this message and keep the step"
                onClick={actions.dismissRestore}
              />
            }
          >
            <Button size="small" onClick={() => void actions.putBack()}>
              {lastStep.isPutBack ? "Do it again" : "Restore what was there"}
            </Button>
          </MessageBarActions>
        </MessageBar>
      )}
    </section>
  );
}
