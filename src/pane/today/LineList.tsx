import { Button, mergeClasses } from "@fluentui/react-components";
import { useState } from "react";
import type { CellPosition } from "../../sheet/cellPosition";
import { GoToCell } from "../frame/GoToCell";
import { useTodayStyles } from "./useTodayStyles";

const FIRST_PAGE = 6;
const NEXT_PAGE = 50;

/** One row of a list: its name goes to its cell, the fact stands beside it, the rest below. */
export interface Line {
  readonly at: CellPosition;
  readonly sheetName: string;
  readonly name: string;
  readonly fact: string;
  readonly more: string;
}

/** Lines a page at a time, each a button that goes to its cell. */
export function LineList({ lines }: { readonly lines: readonly Line[] }) {
  const styles = useTodayStyles();
  const [shown, setShown] = useState(FIRST_PAGE);
  return (
    <>
      <ul className={styles.list}>
        {lines.slice(0, shown).map(({ at, sheetName, name, fact, more }, index) => (
          <li
            key={`${at.sheetId} ${at.row} ${at.column}`}
            className={mergeClasses(styles.line, index === 0 && styles.lineFirst)}
          >
            <div className={styles.lineHead}>
              <GoToCell at={at} sheetName={sheetName}>
                {name}
              </GoToCell>
              <span className={styles.lineFact}>{fact}</span>
            </div>
            {more !== "" && <div className={styles.lineMore}>{more}</div>}
          </li>
        ))}
      </ul>
      {lines.length > shown && (
        <Button size="small" className={styles.more} onClick={() => setShown(shown + NEXT_PAGE)}>
          {`Show ${Math.min(NEXT_PAGE, lines.length - shown)} more of ${lines.length.toLocaleString("en-GB")}`}
        </Button>
      )}
    </>
  );
}
