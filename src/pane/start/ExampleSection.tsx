import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { cellName } from "../../sheet/cellName";
import { usePane } from "../frame/usePane";
import { sayCount } from "../sayCount";
import type { ExampleRow } from "./exampleRows";
import { StartStep } from "./StartStep";
import { useStartStyles } from "./useStartStyles";

/** The rows that still say they are examples, and the way to clear them in one step. */
export function ExampleSection({ rows }: { readonly rows: readonly ExampleRow[] }) {
  const styles = useStartStyles();
  const { actions } = usePane();
  const [isAsking, setAsking] = useState(false);
  if (rows.length === 0) return null;
  const count = sayCount(rows.length, "example row", "example rows");
  const clear = async (): Promise<void> => {
    const edits = rows.flatMap((row) => row.edits);
    if (await actions.write(`${count} cleared`, edits)) setAsking(false);
  };
  return (
    <section>
      <h2 className={styles.heading}>{`There ${rows.length === 1 ? "is" : "are"} ${count}`}</h2>
      <p className={styles.note}>
        They say so in Note. A row you have made your own is kept when you clear its Note first.
      </p>
      {isAsking ? (
        <StartStep
          title={`${count} would be cleared, in one step`}
          sentences={rows.map(({ sheetName, row, column, says }) => `${sheetName}!${cellName(row, column)}: ${says}`)}
          obstacle={null}
          doIt={`Clear ${count}`}
          onDo={() => void clear()}
          onCancel={() => setAsking(false)}
        />
      ) : (
        <Button size="small" className={styles.action} onClick={() => setAsking(true)}>
          {`Clear ${count}…`}
        </Button>
      )}
    </section>
  );
}
