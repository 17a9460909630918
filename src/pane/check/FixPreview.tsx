import { Button, mergeClasses } from "@fluentui/react-components";
import { useState } from "react";
import type { SheetTable } from "../../sheet/sheetTable";
import { cellName } from "../../sheet/cellName";
import { StepPanel } from "../frame/StepPanel";
import { TableHead } from "../frame/TableHead";
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
  const [shown, setShown] = useState(SHOWN_AT_FIRST);
  const { edits, leftOut } = fixes;
  const cells = sayCount(edits.length, "cell", "cells");
  return (
    <StepPanel
      level={4}
      title={`${cells} would be written in one step`}
      doIt={`Write ${cells}`}
      onDo={onWrite}
      onCancel={onCancel}
    >
      <table className={styles.preview}>
        <TableHead
          headings={["Cell", "Now", "Becomes"]}
          className={mergeClasses(styles.previewCell, styles.previewHeading)}
        />
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
    </StepPanel>
  );
}
