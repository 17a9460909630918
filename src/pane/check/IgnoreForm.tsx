import { Button, Field, Input } from "@fluentui/react-components";
import { useState } from "react";
import type { Dispatch } from "react";
import type { CheckAction } from "./CheckAction";
import { useCheckStyles } from "./useCheckStyles";

interface IgnoreFormProps {
  readonly place: string;
  readonly reason: string;
  readonly dispatch: Dispatch<CheckAction>;
  readonly onIgnore: () => void;
}

/** Asks why a finding is right as it is; without a reason nothing is ignored. */
export function IgnoreForm({ place, reason, dispatch, onIgnore }: IgnoreFormProps) {
  const styles = useCheckStyles();
  const [isReasonMissing, setReasonMissing] = useState(false);
  return (
    <form
      className={styles.panel}
      aria-label={`Ignore the finding at ${place}`}
      onSubmit={(event) => {
        event.preventDefault();
        if (reason.trim() === "") setReasonMissing(true);
        else onIgnore();
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") dispatch({ type: "ignore ended" });
      }}
    >
      <Field
        label="Why is it right as it is?"
        hint="Kept in the workbook. The finding comes back when the cell changes."
        validationState={isReasonMissing && reason.trim() === "" ? "error" : "none"}
        validationMessage={
          isReasonMissing && reason.trim() === "" ? "Give a reason, such as: agreed with the lender." : undefined
        }
      >
        <Input
          autoFocus
          value={reason}
          onChange={(_, { value }) => dispatch({ type: "reason typed", reason: value })}
        />
      </Field>
      <div className={styles.actions}>
        <Button type="submit" size="small" appearance="primary" className={styles.action}>
          Ignore
        </Button>
        <Button size="small" className={styles.action} onClick={() => dispatch({ type: "ignore ended" })}>
          Cancel
        </Button>
      </div>
    </form>
  );
}
