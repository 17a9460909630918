import { Field, Input } from "@fluentui/react-components";
import { useMemo, useState } from "react";
import type { Day } from "../../domain/day/day";
import { sayProblem } from "../../domain/wording";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { sayNextLook } from "./sayNextLook";
import { useTodayStyles } from "./useTodayStyles";

interface NextLookTimeProps {
  readonly day: Day;
  /** The clock, as a fraction of a day, while the day is today; else null. */
  readonly clock: number | null;
}

/** How long until the next look is called: by the clock on the day itself, or at a time typed here. */
export function NextLookTime({ day, clock }: NextLookTimeProps) {
  const styles = useTodayStyles();
  const [typed, setTyped] = useState("");
  const time = readTimeOfDay(typed, "Time");
  const now = time.ok ? (time.value ?? clock) : null;
  const said = useMemo(() => (now === null ? null : sayNextLook(day, now)), [day, now]);
  return (
    <>
      <p className={styles.next} aria-live={typed === "" ? undefined : "polite"}>
        {said}
      </p>
      <Field
        label="Minutes to the next look, at"
        hint={clock === null ? "Type a time, such as 10:40." : "By the clock; type another time to see it."}
        validationState={time.ok ? "none" : "error"}
        validationMessage={time.ok ? undefined : sayProblem(time.problem)}
      >
        <Input className={styles.limitInput} value={typed} onChange={(_, { value }) => setTyped(value)} />
      </Field>
    </>
  );
}
