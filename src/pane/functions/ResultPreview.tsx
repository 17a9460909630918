import { mergeClasses } from "@fluentui/react-components";
import { sayCount } from "../sayCount";
import type { ShownResult } from "./ShownResult";
import { useFunctionsStyles } from "./useFunctionsStyles";

/** Enough to see whether it is right. */
const SHOWN_ROWS = 10;

/** What the formula would show, before it is inserted. */
export function ResultPreview({ result }: { readonly result: ShownResult }) {
  const styles = useFunctionsStyles();
  if (result.kind === "value") return <p className={styles.value}>{result.text === "" ? "(blank)" : result.text}</p>;
  if (result.kind === "error") {
    return (
      <p className={styles.obstacle}>
        <b>{result.code}</b> {result.sentence}
      </p>
    );
  }
  const [headings = [], ...rows] = result.rows;
  const left = rows.length - SHOWN_ROWS;
  return (
    <>
      <div className={styles.tableFrame} role="region" aria-label="The result as a table" tabIndex={0}>
        <table className={styles.table}>
          <thead>
            <tr>
              {headings.map((heading, column) => (
                <th key={column} scope="col" className={mergeClasses(styles.cell, styles.cellHeading)}>
                  {heading}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.slice(0, SHOWN_ROWS).map((cells, row) => (
              <tr key={row}>
                {cells.map((cell, column) => (
                  <td key={column} className={styles.cell}>
                    {cell}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className={styles.note}>
        {rows.length === 0
          ? "No row: the headings alone."
          : left > 0
            ? `The first ${SHOWN_ROWS} of ${sayCount(rows.length, "row", "rows")}.`
            : sayCount(rows.length, "row", "rows")}
      </p>
    </>
  );
}
