import { Button, mergeClasses } from "@fluentui/react-components";
import { useEffect, useRef, useState } from "react";
import type { SheetTable } from "../../sheet/sheetTable";
import { cellName } from "../../sheet/cellName";
import { sayCount } from "../sayCount";
import type { FixesTogether } from "./fixesTogether";
import { isDateCell } from "./isDateCell";
import { sayEdit } from "./sayEdit";
import { useCheckStyles } from "./useCheckStyles";

/** Enough to judge by; the rest is shown on asking. */
const SHOWN_AT_FIRST = 20;

interface FixPreviewProps {
  readonly fixes: FixesTogether;
  readonly tables: readonly SheetTable[];
  readonly sheetNames: ReadonlyMap<string, string>;
  readonly onWrite: () => void;
  readonly onCancel: () => void;
}

/** Every cell that a step would write, as it is and as it becomes, before anything is written. */
export function FixPreview({ fixes, tables, sheetNames, onWrite, onCancel }: FixPreviewProps) {
  const styles = useCheckStyles();
  const heading = useRef<HTMLHeadingElement>(null);
  const [shown, setShown] = useState(SHOWN_AT_FIRST);
  useEffect(() => heading.current?.focus(), []);
  const { edits, leftOut } = fixes;
  const cells = sayCount(edits.length, "cell", "cells");
  return (
    <div
      className={styles.panel}
      onKeyDown={(event) => {
        if (event.key === "Escape") onCancel();
      }}
    >
      <h4 ref={heading} tabIndex={-1} className={styles.panelHeading}>
        {cells} would be written in one step
      </h4>
      <table className={styles.preview}>
        <thead>
          <tr>
            {["Cell", "Now", "Becomes"].map((text) => (
              <th key={text} scope="col" className={mergeClasses(styles.previewCell, styles.previewHeading)}>
                {text}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {edits.slice(0, shown).map((edit) => {
            const { before, after } = sayEdit(edit, isDateCell(edit.at, tables));
            const place = `${sheetNames.get(edit.at.sheetId) ?? ""}!${cellName(edit.at.row, edit.at.column)}`;
            return (
              <tr key={place}>
                <th scope="row" className={styles.previewCell}>
                  {place}
                </th>
                <td className={styles.previewCell}>{before}</td>
                <td className={styles.previewCell}>{after}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
      {edits.length > shown && (
        <Button size="small" appearance="subtle" className={styles.action} onClick={() => setShown(shown + 200)}>
          {`Show more of them (${edits.length - shown} not shown)`}
        </Button>
      )}
      {leftOut > 0 && (
        <p className={styles.message}>
          {sayCount(leftOut, "fix", "fixes")} left for a second go, since another one writes the same cell.
        </p>
      )}
      <div className={styles.actions}>
        <Button size="small" appearance="primary" className={styles.action} onClick={onWrite}>
          {`Write ${cells}`}
        </Button>
        <Button size="small" className={styles.action} onClick={onCancel}>
          Cancel
        </Button>
      </div>
    </div>
  );
}
