import { Button, Field, Input } from "@fluentui/react-components";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { readDate } from "../../sheet/readDate";
import { usePane } from "../frame/usePane";
import { sayDay } from "../sayDay";
import { useTodayStyles } from "./useTodayStyles";

/** The day every figure of the pane is for: today, until another is chosen. */
export function DayChooser() {
  const styles = useTodayStyles();
  const { state, actions } = usePane();
  const { asOf, today } = state;
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
        {!isToday && <Button onClick={() => actions.chooseDay(today)}>Back to today</Button>}
      </div>
      <p className={styles.dayNote}>
        {isToday
          ? `${sayDay(asOf)}, today.`
          : `${sayDay(asOf)}. Not today: today is ${sayDay(today)}. Both views count for the day chosen.`}
      </p>
    </>
  );
}
