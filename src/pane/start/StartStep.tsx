import { StepPanel } from "../frame/StepPanel";
import { useStartStyles } from "./useStartStyles";

interface StartStepProps {
  readonly title: string;
  /** What it will do, a sentence for each part. */
  readonly sentences: readonly string[];
  /** Why it cannot be done, or null. */
  readonly obstacle: string | null;
  readonly doIt: string;
  readonly onDo: () => void;
  readonly onCancel: () => void;
}

/** What a step of Start will do, part by part, before it is done. */
export function StartStep({ title, sentences, obstacle, doIt, onDo, onCancel }: StartStepProps) {
  const styles = useStartStyles();
  return (
    <StepPanel level={3} title={title} doIt={obstacle === null ? doIt : null} onDo={onDo} onCancel={onCancel}>
      <ul className={styles.list}>
        {sentences.map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
      {obstacle !== null && <p className={styles.obstacle}>{obstacle}</p>}
    </StepPanel>
  );
}
