import { useState } from "react";
import { Button } from "@fluentui/react-components";
import { useHandOverStyles } from "./useHandOverStyles";

const FIRST_PAGE = 5;

/** What a document lacks, each with the remedy; long lists wait to be asked for. */
export function GapList({ missing }: { readonly missing: readonly string[] }) {
  const styles = useHandOverStyles();
  const [isWhole, setIsWhole] = useState(false);
  if (missing.length === 0) return null;
  const shown = isWhole ? missing : missing.slice(0, FIRST_PAGE);
  return (
    <section className={styles.card} aria-labelledby="hand-over-missing">
      <h3 id="hand-over-missing" className={styles.gapsHeading}>
        What is missing
      </h3>
      <ul className={styles.gaps}>
        {shown.map((sentence, at) => (
          <li key={`${at} ${sentence}`}>{sentence}</li>
        ))}
      </ul>
      {shown.length < missing.length && (
        <Button size="small" className={styles.action} onClick={() => setIsWhole(true)}>
          {`Show ${missing.length - shown.length} more`}
        </Button>
      )}
    </section>
  );
}
