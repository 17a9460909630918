import { Field, Select } from "@fluentui/react-components";
import { memo } from "react";
import { headingVocabulary } from "../../sheet/headingVocabulary";
import type { TableKind } from "../../sheet/tableKind";
import { columnLetters } from "../../sheet/columnLetters";
import type { ColumnReading } from "./ColumnReading";
import { fieldName } from "./fieldName";
import { useColumnsStyles } from "./useColumnsStyles";

interface ColumnLineProps {
  readonly reading: ColumnReading;
  readonly kind: TableKind;
  /** The column of the sheet, from 0. */
  readonly sheetColumn: number;
  /** Fields that other headings of the table are read as. */
  readonly headingOf: ReadonlyMap<string, string>;
  readonly isDisabled: boolean;
  readonly onChoose: (column: number, field: string | null) => void;
}

const OBSTACLES = {
  "no heading": "Type a heading above it first; a column is known by its heading.",
  "heading twice": "Another column has the very same heading; rename one of them to choose.",
};

/** One heading with samples of what stands under it, and what it is read as. */
export const ColumnLine = memo(function ColumnLine(props: ColumnLineProps) {
  const { reading, kind, headingOf } = props;
  const styles = useColumnsStyles();
  const { heading, field, samples, obstacle } = reading;
  const letters = columnLetters(props.sheetColumn);
  const held = samples.length === 0 ? "Nothing under it." : `Under it: ${samples.join(", ")}.`;
  const chosen = reading.isChosen ? " Chosen by hand." : "";
  const why = obstacle === null ? "" : ` ${OBSTACLES[obstacle]}`;
  return (
    <li className={styles.line}>
      <Field
        label={heading.trim() === "" ? `Column ${letters}, without a heading` : `${heading} (column ${letters})`}
        hint={held + chosen + why}
      >
        <Select
          className={styles.control}
          value={field ?? ""}
          disabled={props.isDisabled || (obstacle !== null && field === null)}
          onChange={(_, { value }) => props.onChoose(reading.column, value === "" ? null : value)}
        >
          <option value="">
            {reading.contested === null ? "Not read" : `Undecided: could be ${fieldName(kind, reading.contested)}`}
          </option>
          {[...headingVocabulary(kind).canonical].map(([name, shown]) => {
            const other = headingOf.get(name);
            return (
              <option key={name} value={name}>
                {other === undefined || name === field ? shown : `${shown} (now ${other})`}
              </option>
            );
          })}
        </Select>
      </Field>
    </li>
  );
});
