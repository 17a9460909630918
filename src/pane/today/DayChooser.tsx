import { Button, Field, Input } from "@fluentui/react-components";
import { useMemo } from "react";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { readDate } from "../../sheet/readDate";
import { GoToCell } from "../frame/GoToCell";
import { usePane } from "../frame/usePane";
import { sayDay } from "../sayDay";
import { sheetDay } from "./sheetDay";
import { useTodayStyles } from "./useTodayStyles";

/**
 * The day every figure of the pane is for: the day the sheet says it counts for, else today, until another is chosen.
 * Pane and functions so agree from the start, and the way to today is one button.
 */
export function DayChooser() {
  const styles = useTodayStyles();
  const { state, actions } = usePane();
  const { asOf, today, isDayChosen, read } = state;
  const own = useMemo(() => (read === null ? null : sheetDay(read.workbook)), [read]);
  const isOwn = own !== null && own.day === asOf;
  return (
    <>
      <div className={styles.day}>
        <Field label="As of">
          <Input
            type="date"
            value={isoFromSerial(asOf)}
            onChange={(_, { value }) => {
              // Half a date is "" and changes nothing.
              const day = readDate(value, "As of");
              if (day.ok && day.value !== null) actions.chooseDay(day.value);
            }}
          />
        </Field>
        {isDayChosen && own !== null && !isOwn && (
          <Button onClick={() => actions.followDay()}>{`The sheet’s day, ${isoFromSerial(own.day)}`}</Button>
        )}
        {asOf !== today && (
          <Button onClick={() => (own === null ? actions.followDay() : actions.chooseDay(today))}>Today instead</Button>
        )}
      </div>
      <p className={styles.dayNote}>
        {`${sayDay(asOf)}${asOf === today ? ", today." : "."}`}
        {own !== null && (
          <>
            {isOwn ? " The day the sheet counts for, at " : " The sheet counts for another day, at "}
            <GoToCell at={own.at} sheetName={own.sheetName} />.
          </>
        )}
        {asOf !== today && ` Today is ${sayDay(today)}.`}
      </p>
    </>
  );
}
