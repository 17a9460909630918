import { GoToCell } from "../frame/GoToCell";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { LineList } from "./LineList";
import type { SendList } from "./SendList";
import { useTodayStyles } from "./useTodayStyles";

/** The last day to send each piece that goes back by courier. */
export function SendSection({ sends, asOf }: { readonly sends: SendList; readonly asOf: number }) {
  const styles = useTodayStyles();
  const { lines, closed, isAnyCourierKnown } = sends;
  const first = lines[0];
  const heading =
    first === undefined
      ? "Nothing to send"
      : first.sendBy < asOf
        ? "To send: overdue"
        : first.sendBy === asOf
          ? "To send today"
          : `Next to send: by ${sayDay(first.sendBy)}`;
  return (
    <section className={styles.section} aria-labelledby="today-send">
      <h2 id="today-send" className={styles.heading}>
        {heading}
      </h2>
      <LineList
        lines={lines.map((line) => ({
          ...line,
          fact: `by ${sayDay(line.sendBy)}`,
          more: `${line.lender} · ${sayCount(line.courierDays, "day", "days")} by courier, due ${sayDay(line.due)}${
            line.sendBy < asOf ? " · no longer in time by courier" : ""
          }`,
        }))}
      />
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
    </section>
  );
}
