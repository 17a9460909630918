import { Button, Field, Input } from "@fluentui/react-components";
import { useMemo } from "react";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { readDate } from "../../sheet/readDate";
import { GoToCell } from "../frame/GoToCell";
import { usePane } from "../frame/usePane";
import { sayDay } from "../sayDay";
import { sheetDay } from "./sheetDay";
import { useTodayStyles } from "./useTodayStyles";

/** The day every figure of the pane is for: today, until another is chosen; the day the sheet counts for is offered beside it. */
export function DayChooser() {
  const styles = useTodayStyles();
  const { state, actions } = usePane();
  const { asOf, today, read } = state;
  const own = useMemo(() => (read === null ? null : sheetDay(read.workbook)), [read]);
  const isToday = asOf === today;
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
        {own !== null && own.day !== asOf && (
          <Button onClick={() => actions.chooseDay(own.day)}>{`The sheet’s day, ${isoFromSerial(own.day)}`}</Button>
        )}
        {!isToday && <Button onClick={() => actions.chooseDay(today)}>Back to today</Button>}
      </div>
      <p className={styles.dayNote}>
        {isToday
          ? `${sayDay(asOf)}, today.`
          : `${sayDay(asOf)}. Not today: today is ${sayDay(today)}. Both views count for the day chosen.`}
        {own !== null && own.day === asOf && !isToday && (
          <>
            {" The sheet counts for the same day, at "}
            <GoToCell at={own.at} sheetName={own.sheetName} />.
          </>
        )}
        {own !== null && own.day !== asOf && (
          <>
            {" The sheet counts for another day, at "}
            <GoToCell at={own.at} sheetName={own.sheetName} />.
          </>
        )}
      </p>
    </>
  );
}
