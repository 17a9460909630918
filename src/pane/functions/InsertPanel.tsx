import { StepPanel } from "../frame/StepPanel";
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
  const { warnings, refusals } = obstacles;
  return (
    <StepPanel
      level={3}
      title={`Into ${place}`}
      doIt={refusals.length > 0 ? null : warnings.length === 0 ? "Insert it" : "Insert it all the same"}
      onDo={onWrite}
      onCancel={onCancel}
      other={{ label: "Take the cell selected now", onClick: onAskAgain }}
    >
      <code className={styles.formula}>{formula}</code>
      {[...refusals, ...warnings].map((sentence) => (
        <p key={sentence} className={styles.obstacle}>
          {sentence}
        </p>
      ))}
    </StepPanel>
  );
}
