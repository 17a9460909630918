import { mergeClasses } from "@fluentui/react-components";
import { TableHead } from "../frame/TableHead";
import type { PlannedDay } from "../../domain/day/plannedDay";
import { sayClock } from "../../domain/sayClock";
import type { DayMarks } from "./dayMarks";
import type { DayRow } from "./DayRow";
import { useTodayStyles } from "./useTodayStyles";

interface DayTableProps {
  readonly rows: readonly DayRow[];
  readonly plan: PlannedDay;
  readonly marks: DayMarks;
}

/** What the picture of the day shows, as a table. */
export function DayTable({ rows, plan, marks }: DayTableProps) {
  const styles = useTodayStyles();
  const moments: readonly (readonly [string, string, number, number | null])[] = [
    ...(plan.meal === null ? [] : [["Everyone", "meal", plan.meal.from, plan.meal.until] as const]),
    ...(marks.wrap === null ? [] : [["Everyone", "wrap", marks.wrap, null] as const]),
    ...(marks.now === null ? [] : [["Clock", "now", marks.now, null] as const]),
  ];
  const lines = [
    ...rows.flatMap(({ name, bars }) => bars.map(({ said, from, until }) => [name, said, from, until] as const)),
    ...moments,
  ];
  return (
    <details>
      <summary className={styles.summary}>The day as a table</summary>
      <table className={styles.figures}>
        <TableHead
          headings={["Who", "What", "From", "Until"]}
          className={mergeClasses(styles.figuresCell, styles.figuresHead)}
        />
        <tbody>
          {lines.map(([who, what, from, until]) => (
            <tr key={`${who} ${what} ${from}`}>
              <th scope="row" className={styles.figuresCell}>
                {who}
              </th>
              <td className={styles.figuresCell}>{what}</td>
              <td className={styles.figuresCell}>{sayClock(from)}</td>
              <td className={styles.figuresCell}>{until === null ? "" : sayClock(until)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </details>
  );
}
