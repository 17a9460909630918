import { Button, Field, Select } from "@fluentui/react-components";
import { usePane } from "../frame/usePane";
import { namesGone } from "./namesGone";
import { movedChoices } from "./movedChoices";
import { useColumnsStyles } from "./useColumnsStyles";
import type { KeptChoicesInHand } from "./useKeptChoices";

/** Choices for sheets that were renamed or deleted: they are used again where the user says so, never by themselves. */
export function LostSheets({ kept }: { readonly kept: KeptChoicesInHand }) {
  const styles = useColumnsStyles();
  const sheetNames = (usePane().state.read?.workbook.sheets ?? []).map(({ name }) => name);
  const lost = namesGone(kept, sheetNames);
  if (lost.length === 0) return null;
  return (
    <section>
      <h2 className={styles.heading}>Chosen for a sheet that is gone</h2>
      {lost.map((name) => (
        <div key={name} className={styles.card}>
          <Field
            label={`"${name}" was renamed or deleted. Use what was chosen for`}
            hint="What was chosen for the other sheet itself goes before it."
          >
            <Select
              className={styles.control}
              value=""
              disabled={!kept.isRead}
              onChange={(_, { value }) => value !== "" && void kept.keep(movedChoices(kept, name, value))}
            >
              <option value="">No sheet</option>
              {sheetNames.map((sheet) => (
                <option key={sheet} value={sheet}>
                  {sheet}
                </option>
              ))}
            </Select>
          </Field>
          <div className={styles.actions}>
            <Button
              size="small"
              className={styles.action}
              disabled={!kept.isRead}
              onClick={() => void kept.keep(movedChoices(kept, name, null))}
            >
              {`Forget what was chosen for "${name}"`}
            </Button>
          </div>
        </div>
      ))}
    </section>
  );
}
