import { Button, Field, Input, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import { usePane } from "../frame/usePane";
import { jobFields } from "./job/jobFields";
import type { JobFacts } from "./job/JobFacts";
import { jobKey } from "./job/jobKey";
import { useHandOverStyles } from "./useHandOverStyles";

/** What letters and papers say of the job, to be filled in once and kept in the workbook. */
export function JobForm({ job }: { readonly job: JobFacts }) {
  const styles = useHandOverStyles();
  const { actions } = usePane();
  const [typed, setTyped] = useState<Partial<JobFacts>>({});
  const [said, setSaid] = useState("");
  const says = { ...job, ...typed };
  const filled = jobFields.filter(({ field }) => job[field] !== "").length;
  return (
    <details className={styles.card}>
      <summary className={styles.opener}>{`The job: ${filled} of ${jobFields.length} filled in`}</summary>
      <form
        className={styles.choices}
        onSubmit={(event) => {
          event.preventDefault();
          void actions.keep(jobKey, JSON.stringify(says)).then((isKept) => {
            if (isKept) setTyped({});
            setSaid(isKept ? "Kept in the workbook." : "");
          });
        }}
      >
        {jobFields.map(({ field, labels, hint, isLong }) => {
          const change = (value: string): void => {
            setSaid("");
            setTyped({ ...typed, [field]: value });
          };
          return (
            <Field key={field} label={labels[0]} {...(hint !== "" && { hint })}>
              {isLong ? (
                <Textarea
                  className={styles.control}
                  resize="vertical"
                  value={says[field]}
                  onChange={(_, { value }) => change(value)}
                />
              ) : (
                <Input className={styles.control} value={says[field]} onChange={(_, { value }) => change(value)} />
              )}
            </Field>
          );
        })}
        <Button type="submit" className={styles.action}>
          Keep in the workbook
        </Button>
        <p aria-live="polite" className={styles.about}>
          {said}
        </p>
      </form>
    </details>
  );
}
