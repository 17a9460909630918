import { usualRefundDays } from "../../domain/value/usualRefundDays";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { sayMoney } from "../sayMoney";
import { LineList } from "./LineList";
import type { RefundLine } from "./refundsToday";
import { TodaySection } from "./TodaySection";
import { useTodayStyles } from "./useTodayStyles";

function sayLeft(daysLeft: number | null): string {
  if (daysLeft === null) return "no last day";
  if (daysLeft < 0) return `ended ${sayCount(-daysLeft, "day", "days")} ago`;
  return daysLeft === 0 ? "last day" : `${sayCount(daysLeft, "day", "days")} left`;
}

/** What goes back to shops, and until when each refunds. */
export function RefundsSection({ refunds }: { readonly refunds: readonly RefundLine[] }) {
  const styles = useTodayStyles();
  const soon = refunds.filter(({ daysLeft }) => daysLeft !== null && daysLeft <= usualRefundDays);
  const later = refunds.filter((line) => !soon.includes(line));
  const ended = soon.filter(({ daysLeft }) => daysLeft! < 0);
  const toLine = (line: RefundLine) => ({
    ...line,
    name: line.shop,
    fact: sayLeft(line.daysLeft),
    more: [
      line.toComeBack === null ? "" : `${sayMoney(line.toComeBack, line.currency)} to come back`,
      line.refundBy === null ? "" : `by ${sayDay(line.refundBy)}`,
      line.sentence ?? "",
    ]
      .filter((part) => part !== "")
      .join(" · "),
  });
  const heading =
    refunds.length === 0
      ? "No refund open"
      : soon.length === 0
        ? `No refund ends soon: ${refunds.length} open`
        : `Refunds that end soon: ${sayCount(soon.length, "receipt", "receipts")}`;
  return (
    <TodaySection id="refunds" heading={heading} isAlarm={ended.length > 0}>
      <LineList of={soon} toLine={toLine} />
      {later.length > 0 && (
        <details>
          <summary className={styles.summary}>{sayCount(later.length, "refund", "refunds")} with more time</summary>
          <LineList of={later} toLine={toLine} />
        </details>
      )}
      {refunds.length > 0 && (
        <p className={styles.note}>The receipt and the shop’s own terms decide, also on condition and tags.</p>
      )}
    </TodaySection>
  );
}
