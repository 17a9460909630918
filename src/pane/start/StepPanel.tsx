import { Button } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import { useStartStyles } from "./useStartStyles";

interface StepPanelProps {
  readonly title: string;
  readonly sentences: readonly string[];
  /** Why it cannot be done, or null. */
  readonly obstacle: string | null;
  readonly doIt: string;
  readonly onDo: () => void;
  readonly onCancel: () => void;
}

/** Says what a step will do before it is done. */
export function StepPanel({ title, sentences, obstacle, doIt, onDo, onCancel }: StepPanelProps) {
  const styles = useStartStyles();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <div
      className={styles.panel}
      onKeyDown={(event) => {
        if (event.key === "Escape") onCancel();
      }}
    >
      <h3 ref={heading} tabIndex={-1} className={styles.panelHeading}>
        {title}
      </h3>
      <ul className={styles.list}>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {obstacle !== null && <p className={styles.obstacle}>{obstacle}</p>}
      <div className={styles.actions}>
        {obstacle === null && (
          <Button size="small" appearance="primary" className={styles.action} onClick={onDo}>
            {doIt}
          </Button>
        )}
        <Button size="small" className={styles.action} onClick={onCancel}>
          Cancel
        </Button>
      </div>
    </div>
  );
}
