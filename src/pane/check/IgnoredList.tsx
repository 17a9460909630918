import { Button } from "@fluentui/react-components";
import { GoToCell } from "../frame/GoToCell";
import { sayCount } from "../sayCount";
import type { IgnoredEntry } from "./IgnoredEntry";
import type { SplitFindings } from "./splitIgnored";
import { useCheckStyles } from "./useCheckStyles";

interface IgnoredListProps {
  readonly ignored: SplitFindings["ignored"];
  readonly unreadable: number;
  readonly onCheckAgain: (entry: IgnoredEntry) => void;
}

/** What was ignored and why, each with the way back. */
export function IgnoredList({ ignored, unreadable, onCheckAgain }: IgnoredListProps) {
  const styles = useCheckStyles();
  if (ignored.length === 0 && unreadable === 0) return null;
  return (
    <details className={styles.details}>
      <summary className={styles.detailsSummary}>
        {sayCount(ignored.length, "finding ignored", "findings ignored")}
      </summary>
      {unreadable > 0 && (
        <p>{sayCount(unreadable, "kept entry", "kept entries")} could not be read; what they hid is shown as found.</p>
      )}
      <ul className={styles.list}>
        {ignored.map(({ entry, hides }) => {
          const now = hides[0]?.finding;
          return (
            <li key={entry.key} className={styles.card} data-steady={`ignored ${entry.key}`}>
              <div className={styles.cardHead}>
                {now === undefined ? <b>{entry.place}</b> : <GoToCell at={now.at} sheetName={now.sheetName} />}
                <span className={styles.place}>{entry.heading}</span>
                <span className={styles.held}>{entry.held}</span>
              </div>
              <p className={styles.message}>{entry.message}</p>
              <p className={styles.message}>
                Ignored on {entry.ignoredOn}: {entry.reason}
              </p>
              {now === undefined && (
                <p className={styles.place}>Not found at present: the cell has changed, or it was mended.</p>
              )}
              <Button
                size="small"
                className={styles.action}
                aria-label={`${now === undefined ? "Remove from this list" : "Show it again"}: ${entry.place}`}
                onClick={() => onCheckAgain(entry)}
              >
                {now === undefined ? "Remove from this list" : "Show it again"}
              </Button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
