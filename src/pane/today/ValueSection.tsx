import { mergeClasses } from "@fluentui/react-components";
import { useMemo } from "react";
import type { CoverNote } from "../../sheet/coverNote";
import { GoToCell } from "../frame/GoToCell";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { sayMoney } from "../sayMoney";
import { againstCover } from "./againstCover";
import { type CoverSpan, coverSpans } from "./coverSpans";
import { CoverForm } from "./CoverForm";
import type { CoverLimits } from "./CoverLimits";
import { coverOn } from "./coverOn";
import { coverToday } from "./coverToday";
import { isHeld } from "./isHeld";
import { LineList } from "./LineList";
import { PieceCover } from "./PieceCover";
import type { PieceTable } from "./PieceTable";
import { useTodayStyles } from "./useTodayStyles";
import { ValuePicture } from "./ValuePicture";
import type { CurrencyValue } from "./CurrencyValue";

interface ValueSectionProps {
  readonly value: CurrencyValue;
  /** Set in the pane; they go before what the workbook states. */
  readonly limits: CoverLimits;
  readonly notes: readonly CoverNote[];
  readonly isOnlyCurrency: boolean;
  readonly pieces: readonly PieceTable[];
  readonly asOf: number;
}

/** What is out in one currency, against its cover, and how it goes by day. */
export function ValueSection({ value, limits, notes, isOnlyCurrency, pieces, asOf }: ValueSectionProps) {
  const styles = useTodayStyles();
  const { currency, valueOut, piecesHeld, piecesUnvalued, unread } = value;
  const stated = useMemo(() => coverToday(notes, "all", currency, isOnlyCurrency), [notes, currency, isOnlyCurrency]);
  const ofOne = useMemo(
    () => coverOn(coverToday(notes, "one", currency, isOnlyCurrency), asOf),
    [notes, currency, isOnlyCurrency, asOf],
  );
  const set = limits.get(currency);
  const cover = useMemo(
    () => (set === undefined ? stated : { everyDay: { amount: set, place: null }, byDay: new Map() }),
    [stated, set],
  );
  const ofDay = coverOn(cover, asOf);
  const against = againstCover(valueOut, ofDay?.amount ?? null);
  const spans = useMemo(() => coverSpans(value.rows, cover, asOf), [value.rows, cover, asOf]);
  const headingId = `today-value-${currency}`;
  return (
    <section className={styles.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={styles.heading}>
        {currency === "" ? "Value out" : `Value out in ${currency}`}
      </h2>
      <div className={mergeClasses(styles.figure, against.is === "over" && styles.alarm)}>
        {unread.length > 0 && "at least "}
        {isHeld(value) ? sayMoney(valueOut, currency) : "Nothing out yet"}
      </div>
      <p className={styles.note}>
        {against.is === "no limit" &&
          (cover.byDay.size === 0
            ? "No cover limit is stated. "
            : `No cover is stated for this day, only for ${sayCount(cover.byDay.size, "other day", "other days")}. `)}
        {against.is === "within" &&
          `${sayMoney(against.left, currency)} below the cover of ${sayMoney(against.limit, currency)} (${Math.round(against.share * 100)} % used)`}
        {against.is === "over" &&
          `Over the cover of ${sayMoney(against.limit, currency)} by ${sayMoney(against.overBy, currency)}`}
        {ofDay !== null &&
          (ofDay.place === null ? (
            ", set below. "
          ) : (
            <>
              {", stated at "}
              <GoToCell at={ofDay.place.at} sheetName={ofDay.place.sheetName} />
              {". "}
            </>
          ))}
        {sayCount(piecesHeld, "piece", "pieces")} held, those that come back on the day counted
        {piecesUnvalued > 0 && `; ${piecesUnvalued} without a value`}.
      </p>
      {spans.length > 0 && (
        <>
          <h3 className={mergeClasses(styles.part, styles.alarm)}>Days over the cover</h3>
          <ul className={styles.list}>
            {spans.map((span) => (
              <li key={span.from} className={styles.line}>
                {saySpan(span, currency)}
              </li>
            ))}
          </ul>
        </>
      )}
      {ofOne !== null && <PieceCover pieces={pieces} currency={currency} limit={ofOne} asOf={asOf} />}
      {unread.length > 0 && (
        <>
          <p className={styles.note}>Left out, since the row cannot be read:</p>
          <LineList of={unread} toLine={(line) => ({ ...line, fact: "", more: line.sentence })} />
        </>
      )}
      <CoverForm currency={currency} limits={limits} stated={coverOn(stated, asOf)} />
      <ValuePicture value={value} asOf={asOf} cover={cover} />
    </section>
  );
}

function saySpan({ from, until, value, overBy }: CoverSpan, currency: string): string {
  const days =
    until === from ? sayDay(from) : `${sayDay(from)} until ${until === null ? "all is back" : sayDay(until)}`;
  return `${days}: up to ${sayMoney(value, currency)}, over by ${sayMoney(overBy, currency)}`;
}
