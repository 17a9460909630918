import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { chosenKind } from "../../sheet/chosenKind";
import { columnsText } from "../../sheet/columnsText";
import type { SheetTable } from "../../sheet/sheetTable";
import { GoToCell } from "../frame/GoToCell";
import { sayCount } from "../sayCount";
import { sayTableRows } from "../sayTableRows";
import { choicesFor } from "./choicesFor";
import { ColumnLine } from "./ColumnLine";
import { columnReadings } from "./columnReadings";
import { CopyText } from "./CopyText";
import { fieldName } from "./fieldName";
import { KindSelect } from "./KindSelect";
import { useColumnsStyles } from "./useColumnsStyles";
import type { KeptChoicesInHand } from "./useKeptChoices";
import { withAreaKind } from "./withAreaKind";
import { withColumnChoice } from "./withColumnChoice";

/** One table: what it is read as, what each heading is read as, and what is undecided. */
export function TableCard(props: {
  readonly table: SheetTable;
  /** The headings of the other tables of its kind on its sheet. */
  readonly otherHeadings: readonly (readonly string[])[];
  readonly kept: KeptChoicesInHand;
}) {
  const { table, otherHeadings, kept } = props;
  const styles = useColumnsStyles();
  const contested = [...(table.contested ?? [])];
  const [isOpen, setOpen] = useState(contested.length > 0);
  const { sheetId, sheetName, kind, headings } = table;
  const sheetChoices = Object.hasOwn(kept.columns, sheetName) ? kept.columns[sheetName]! : [];
  const sheetKinds = Object.hasOwn(kept.kinds, sheetName) ? kept.kinds[sheetName]! : [];
  const own = choicesFor(table, kept.columns);
  const choose = (column: number, field: string | null): void =>
    void kept.keepColumns(sheetName, withColumnChoice(sheetChoices, table, column, field, otherHeadings));

  const named = headings.filter((heading) => heading.trim() !== "").length;
  const readCount = Object.keys(table.columnOf).length;
  const headingOf = new Map(Object.entries(table.columnOf).map(([field, column]) => [field, headings[column!]!]));
  const { text, unsaid } = columnsText(own);
  return (
    <details
      className={styles.card}
      open={isOpen}
      onToggle={(event) => setOpen(event.currentTarget.open)}
      data-steady={`${sheetId} ${table.firstRow} ${table.firstColumn}`}
    >
      <summary className={styles.opener}>
        {`${table.tableName ?? sheetName}: ${sayTableRows([table])}`}
        <span className={styles.openerMore}>
          {`, ${readCount} of ${sayCount(named, "heading", "headings")} read`}
          {contested.length > 0 && `, ${contested.length} undecided`}
          {own.length > 0 && `, ${own.length} chosen by hand`}
        </span>
      </summary>
      {isOpen && (
        <>
          <p className={styles.note}>
            Headings at{" "}
            <GoToCell
              at={{ sheetId, row: table.firstRow + table.headingRow, column: table.firstColumn }}
              sheetName={sheetName}
            />
          </p>
          {contested.map(([field, columns]) => (
            <fieldset key={field} className={styles.choices}>
              <legend className={styles.legend}>{`Which one is ${fieldName(kind, field)}?`}</legend>
              <p className={styles.note}>Until it is chosen, none of them is used.</p>
              <div className={styles.actions}>
                {columns.map((column) => (
                  <Button
                    key={column}
                    size="small"
                    className={styles.action}
                    disabled={!kept.isRead}
                    aria-label={`${headings[column] ?? ""} is ${fieldName(kind, field)}`}
                    onClick={() => choose(column, field)}
                  >
                    {headings[column]}
                  </Button>
                ))}
              </div>
            </fieldset>
          ))}
          <KindSelect
            label="The table is read as"
            kind={kind}
            isGiven={chosenKind(headings, sheetKinds) !== undefined}
            isDisabled={!kept.isRead}
            onChoose={(given) => void kept.keepKinds(sheetName, withAreaKind(sheetKinds, headings, given))}
          />
          <ul className={styles.list}>
            {columnReadings(table, own).map((reading) => (
              <ColumnLine
                key={reading.column}
                reading={reading}
                kind={kind}
                sheetColumn={table.firstColumn + reading.column}
                headingOf={headingOf}
                isDisabled={!kept.isRead}
                onChoose={choose}
              />
            ))}
          </ul>
          {text !== "" && (
            <CopyText
              label="The same for a formula"
              hint="The last argument, columns, of a function that reads this table."
              text={text}
            />
          )}
          {unsaid.map(({ heading }) => (
            <p key={heading} className={styles.note}>
              {`A formula cannot name the heading "${heading ?? ""}"; take the ; or the line break out of it.`}
            </p>
          ))}
          {own.length > 0 && (
            <Button
              size="small"
              className={styles.action}
              disabled={!kept.isRead}
              onClick={() =>
                void kept.keepColumns(
                  sheetName,
                  sheetChoices.filter((choice) => !own.includes(choice)),
                )
              }
            >
              Forget what was chosen by hand for this table
            </Button>
          )}
        </>
      )}
    </details>
  );
}
