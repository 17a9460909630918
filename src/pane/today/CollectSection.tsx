import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { LineList } from "./LineList";
import type { RequestLine } from "./RequestLine";
import { TodaySection } from "./TodaySection";
import { useTodayStyles } from "./useTodayStyles";

const isPast = ({ neededBy }: RequestLine, asOf: number): boolean => neededBy !== null && neededBy < asOf;

/** What is lent and waits to be fetched. What may long have been, for all that its table says, stands apart and alarms nobody. */
export function CollectSection({ collect, asOf }: { readonly collect: readonly RequestLine[]; readonly asOf: number }) {
  const styles = useTodayStyles();
  const past = collect.filter((line) => !line.isCollectionKept && isPast(line, asOf));
  const open = collect.filter((line) => !past.includes(line));
  const toLine = (line: RequestLine) => ({
    ...line,
    name: line.lender,
    fact: line.neededBy === null ? "no day of need" : `needed ${sayDay(line.neededBy)}`,
    more: [
      isPast(line, asOf) ? "the day of need is past" : "",
      line.wanted,
      line.collect,
      line.contact === "" ? "" : `ask for ${line.contact}`,
    ]
      .filter((part) => part !== "")
      .join(" · "),
  });
  return (
    <TodaySection
      id="collect"
      heading={open.length === 0 ? "Nothing to collect" : `To collect: ${sayCount(open.length, "request", "requests")}`}
      isAlarm={open.some((line) => isPast(line, asOf))}
    >
      <LineList of={open} toLine={toLine} />
      {past.length > 0 && (
        <details>
          <summary className={styles.summary}>
            {`Lent, and the day of need is past: ${sayCount(past.length, "request", "requests")}`}
          </summary>
          <LineList of={past} toLine={toLine} />
        </details>
      )}
      {collect.some(({ isCollectionKept }) => !isCollectionKept) && (
        <p className={styles.note}>
          Some requests have no column Collected: what was lent and is needed soon stands here, fetched or not.
        </p>
      )}
    </TodaySection>
  );
}
