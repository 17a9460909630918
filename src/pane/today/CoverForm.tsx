import { Button, Field, Input } from "@fluentui/react-components";
import { useEffect, useState } from "react";
import { sayProblem } from "../../domain/wording";
import { usePane } from "../frame/usePane";
import { sayMoney } from "../sayMoney";
import type { CoverFigure } from "./Cover";
import { coverKey } from "./coverKey";
import type { CoverLimits } from "./CoverLimits";
import { coverText } from "./coverText";
import { readLimit } from "./readLimit";
import { useTodayStyles } from "./useTodayStyles";

interface CoverFormProps {
  readonly currency: string;
  readonly limits: CoverLimits;
  /** What the workbook states for the day; null where it states nothing. */
  readonly stated: CoverFigure | null;
}

/** Sets a limit of the cover in place of what the workbook states, and goes back to that. */
export function CoverForm({ currency, limits, stated }: CoverFormProps) {
  const styles = useTodayStyles();
  const { actions } = usePane();
  const kept = limits.get(currency);
  const keptText = kept === undefined ? "" : String(kept);
  const [typed, setTyped] = useState(keptText);
  const [complaint, setComplaint] = useState<string | null>(null);
  useEffect(() => setTyped(keptText), [keptText]);

  const keep = (limit: number | null): void => {
    setComplaint(null);
    const changed = new Map(limits);
    if (limit === null) changed.delete(currency);
    else changed.set(currency, limit);
    void actions.keep(coverKey, coverText(changed));
  };
  const set = (): void => {
    const limit = readLimit(typed, currency);
    if (limit.ok) keep(limit.value);
    else setComplaint(sayProblem(limit.problem));
  };
  const isSet = kept !== undefined;
  const hint = isSet
    ? "Kept in this workbook and used for every day."
    : stated === null
      ? "Type it here, or on a sheet beside the words Insurance limit."
      : "Only if another than the sheet’s is meant.";

  return (
    <form
      className={styles.limit}
      onSubmit={(event) => {
        event.preventDefault();
        set();
      }}
    >
      <Field
        className={styles.limitField}
        label={currency === "" ? "Cover limit" : `Cover limit in ${currency}`}
        hint={hint}
        validationState={complaint === null ? "none" : "error"}
        validationMessage={complaint ?? undefined}
      >
        <Input
          className={styles.limitInput}
          inputMode="decimal"
          value={typed}
          placeholder={stated === null ? undefined : sayMoney(stated.amount, "")}
          onChange={(_, { value }) => setTyped(value)}
          contentAfter={
            <Button type="submit" size="small" appearance="subtle" disabledFocusable={typed === keptText}>
              Set
            </Button>
          }
        />
      </Field>
      {isSet && stated !== null && (
        <Button size="small" className={styles.more} onClick={() => keep(null)}>
          {`The sheet’s limit, ${sayMoney(stated.amount, currency)}`}
        </Button>
      )}
    </form>
  );
}
