import { Checkbox } from "@fluentui/react-components";
import { GoToCell } from "../frame/GoToCell";
import type { FoundTable } from "./FoundTable";
import { useStartStyles } from "./useStartStyles";

interface StartCardProps {
  readonly found: FoundTable;
  readonly isTableChosen: boolean;
  readonly headingsChosen: readonly string[];
  readonly onTable: (isChosen: boolean) => void;
  readonly onHeading: (heading: string, isChosen: boolean) => void;
}

/** One table to begin with: offered, or there already with the columns it lacks. */
export function StartCard({ found, isTableChosen, headingsChosen, onTable, onHeading }: StartCardProps) {
  const styles = useStartStyles();
  const { start, place, missing } = found;
  if (place === null) {
    return (
      <div className={styles.card}>
        <Checkbox
          label={start.name}
          checked={isTableChosen}
          aria-describedby={`start-why-${start.id.replace(" ", "-")}`}
          onChange={(_, { checked }) => onTable(checked === true)}
        />
        <p id={`start-why-${start.id.replace(" ", "-")}`} className={styles.note}>
          {start.why}
        </p>
      </div>
    );
  }
  return (
    <div className={styles.card}>
      <fieldset className={styles.group}>
        <legend className={styles.legend}>{start.name}</legend>
        <p className={styles.note}>
          There already, at <GoToCell at={place.at} sheetName={place.sheetName} />
          {missing.length === 0 ? ", with all its columns." : ". Columns it lacks, to be added at its right:"}
        </p>
        <div className={styles.boxes}>
          {missing.map(({ heading }) => (
            <Checkbox
              key={heading}
              label={heading}
              checked={headingsChosen.includes(heading)}
              onChange={(_, { checked }) => onHeading(heading, checked === true)}
            />
          ))}
        </div>
      </fieldset>
    </div>
  );
}
