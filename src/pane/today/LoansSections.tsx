import { mergeClasses } from "@fluentui/react-components";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { sayMoney } from "../sayMoney";
import type { LoanLine } from "./LoanLine";
import type { LoansToday } from "./loansToday";
import { LineList } from "./LineList";
import { useTodayStyles } from "./useTodayStyles";

/** Lender, how many and worth what: the second line of a loan. */
function sayLoan({ lender, quantity, value, currency }: LoanLine): string {
  const parts = [lender === "" ? "no lender" : lender];
  if (quantity > 1) parts.push(`${quantity} pieces`);
  parts.push(
    value === null ? "no value" : currency === "" ? `value ${sayMoney(value, "")}` : sayMoney(value, currency),
  );
  return parts.join(" · ");
}

/** How many pieces the lines stand for, and in how many rows where that differs. */
function sayPieces(lines: readonly LoanLine[]): string {
  const pieces = lines.reduce((sum, { quantity }) => sum + quantity, 0);
  const rows = pieces === lines.length ? "" : ` in ${sayCount(lines.length, "row", "rows")}`;
  return `${sayCount(pieces, "piece", "pieces")}${rows}`;
}

/** What is late, due today and due next, and what cannot be told. */
export function LoansSections({ loans }: { readonly loans: LoansToday }) {
  const styles = useTodayStyles();
  const { late, dueToday, dueLater, untold, piecesWithoutDue, piecesOut } = loans;
  return (
    <>
      <section className={styles.section} aria-labelledby="today-late">
        <h2 id="today-late" className={mergeClasses(styles.heading, late.length > 0 && styles.alarm)}>
          {late.length === 0 ? "Nothing late" : `Late: ${sayPieces(late)}`}
        </h2>
        <LineList
          of={late}
          toLine={(line) => ({ ...line, fact: `${sayCount(line.daysLate, "day", "days")} late`, more: sayLoan(line) })}
        />
      </section>
      <section className={styles.section} aria-labelledby="today-due">
        <h2 id="today-due" className={styles.heading}>
          {dueToday.length === 0 ? "Nothing due on the day" : `Due on the day: ${sayPieces(dueToday)}`}
        </h2>
        <LineList of={dueToday} toLine={(line) => ({ ...line, fact: "due", more: sayLoan(line) })} />
      </section>
      <section className={styles.section} aria-labelledby="today-next">
        <h2 id="today-next" className={styles.heading}>
          {dueLater.length === 0 ? "Nothing due later" : `Due next: ${sayDay(dueLater[0]?.due ?? 0)}`}
        </h2>
        <LineList of={dueLater} toLine={(line) => ({ ...line, fact: sayDay(line.due), more: sayLoan(line) })} />
        <p className={styles.note}>
          {sayCount(piecesOut, "piece", "pieces")} out
          {piecesWithoutDue > 0 && `, of which ${sayCount(piecesWithoutDue, "has", "have")} no due date`}.
        </p>
      </section>
      {untold.length > 0 && (
        <section className={styles.section} aria-labelledby="today-untold">
          <h2 id="today-untold" className={styles.heading}>
            {`Cannot be told: ${sayCount(untold.length, "row", "rows")}`}
          </h2>
          <p className={styles.note}>In no list above until the cell is mended.</p>
          <LineList of={untold} toLine={(line) => ({ ...line, fact: "", more: line.sentence })} />
        </section>
      )}
    </>
  );
}
