import { GoToCell } from "../frame/GoToCell";
import { HolidaysHelper } from "../holidays/HolidaysHelper";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { LineList } from "./LineList";
import type { SendLine, SendList } from "./SendList";
import { useTodayStyles } from "./useTodayStyles";

/** The last day to send each piece that goes back by courier. */
export function SendSection({ sends, asOf }: { readonly sends: SendList; readonly asOf: number }) {
  const styles = useTodayStyles();
  const { lines, closed, isAnyCourierKnown } = sends;
  const inTime = lines.filter(({ sendBy }) => sendBy >= asOf);
  const tooLate = lines.filter(({ sendBy }) => sendBy < asOf);
  const first = inTime[0];
  const heading =
    first === undefined
      ? "Nothing to send by courier"
      : first.sendBy === asOf
        ? "To send on the day"
        : `Next to send: by ${sayDay(first.sendBy)}`;
  const toLine = (line: SendLine) => ({
    ...line,
    fact: `by ${sayDay(line.sendBy)}`,
    more: `${line.lender} · ${sayCount(line.courierDays, "day", "days")} by courier, due ${sayDay(line.due)}`,
  });
  return (
    <section className={styles.section} aria-labelledby="today-send">
      <h2 id="today-send" className={styles.heading}>
        {heading}
      </h2>
      <LineList of={inTime} toLine={toLine} />
      {tooLate.length > 0 && (
        <>
          <h3 className={styles.part}>Too late for the courier: take by hand</h3>
          <LineList of={tooLate} toLine={toLine} />
        </>
      )}
      <p className={styles.note}>
        {isAnyCourierKnown
          ? "Counted back from the due date over working days, Monday to Friday, before the courier’s cut-off"
          : "No lender has courier days: fill the column Courier days of the lenders to see when to send"}
        {isAnyCourierKnown &&
          (closed.place === null ? (
            "; the workbook lists no public holidays"
          ) : (
            <>
              , without the closed days at <GoToCell at={closed.place.at} sheetName={closed.place.sheetName} />
            </>
          ))}
        .
      </p>
      <details>
        <summary className={styles.summary}>Public holidays for the closed days</summary>
        <HolidaysHelper />
      </details>
    </section>
  );
}
