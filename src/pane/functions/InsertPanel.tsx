import { Button } from "@fluentui/react-components";
import { useEffect, useRef } from "react";
import type { InsertionObstacles } from "./insertionObstacles";
import { useFunctionsStyles } from "./useFunctionsStyles";

interface InsertPanelProps {
  /** The cell, with its sheet, as the grid names it. */
  readonly place: string;
  readonly formula: string;
  readonly obstacles: InsertionObstacles;
  readonly onWrite: () => void;
  readonly onAskAgain: () => void;
  readonly onCancel: () => void;
}

/** Says where the formula would go and what is in the way, before anything is written. */
export function InsertPanel({ place, formula, obstacles, onWrite, onAskAgain, onCancel }: InsertPanelProps) {
  const styles = useFunctionsStyles();
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const { warnings, refusals } = obstacles;
  return (
    <div
      className={styles.panel}
      onKeyDown={(event) => {
        if (event.key === "Escape") onCancel();
      }}
    >
      <h3 ref={heading} tabIndex={-1} className={styles.panelHeading}>{`Into ${place}`}</h3>
      <code className={styles.formula}>{formula}</code>
      {[...refusals, ...warnings].map((sentence) => (
        <p key={sentence} className={styles.obstacle}>
          {sentence}
        </p>
      ))}
      <div className={styles.actions}>
        {refusals.length === 0 && (
          <Button size="small" appearance="primary" className={styles.action} onClick={onWrite}>
            {warnings.length === 0 ? "Insert it" : "Insert it all the same"}
          </Button>
        )}
        <Button size="small" className={styles.action} onClick={onAskAgain}>
          Take the cell selected now
        </Button>
        <Button size="small" className={styles.action} onClick={onCancel}>
          Cancel
        </Button>
      </div>
    </div>
  );
}
