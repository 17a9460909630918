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

/** What is listed a page at a time, each a button that goes to its cell; only what is shown is put into words. */
export function LineList<T>({ of, toLine }: { readonly of: readonly T[]; readonly toLine: (one: T) => Line }) {
  const styles = useTodayStyles();
  const [shown, setShown] = useState(FIRST_PAGE);
  const lines = of.slice(0, shown).map(toLine);
  const left = of.length - lines.length;
  return (
    <>
      <ul className={styles.list}>
        {lines.map(({ at, sheetName, name, fact, more }, index) => (
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
      {left > 0 && (
        <Button size="small" className={styles.more} onClick={() => setShown(shown + NEXT_PAGE)}>
          {`Show ${Math.min(NEXT_PAGE, left)} more of ${of.length.toLocaleString("en-GB")}`}
        </Button>
      )}
    </>
  );
}
