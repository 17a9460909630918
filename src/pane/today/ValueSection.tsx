import { Button, Field, Input, mergeClasses } from "@fluentui/react-components";
import { useEffect, useMemo, useState } from "react";
import { sayProblem } from "../../domain/wording";
import { usePane } from "../frame/usePane";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { sayMoney } from "../sayMoney";
import { againstCover } from "./againstCover";
import { type CoverSpan, coverSpans } from "./coverSpans";
import { coverKey } from "./coverKey";
import type { CoverLimits } from "./CoverLimits";
import { coverText } from "./coverText";
import { LineList } from "./LineList";
import { readLimit } from "./readLimit";
import { useTodayStyles } from "./useTodayStyles";
import { ValuePicture } from "./ValuePicture";
import type { CurrencyValue } from "./CurrencyValue";

interface ValueSectionProps {
  readonly value: CurrencyValue;
  readonly limits: CoverLimits;
  readonly asOf: number;
}

/** What is out in one currency, against its cover, and how it goes by day. */
export function ValueSection({ value, limits, asOf }: ValueSectionProps) {
  const styles = useTodayStyles();
  const { currency, valueOut, piecesHeld, piecesUnvalued, unread } = value;
  const limit = limits.get(currency);
  const cover = againstCover(valueOut, limit);
  const spans = useMemo(
    () => (limit === undefined ? [] : coverSpans(value.rows, limit, asOf)),
    [value.rows, limit, asOf],
  );
  const headingId = `today-value-${currency}`;
  return (
    <section className={styles.section} aria-labelledby={headingId}>
      <h2 id={headingId} className={styles.heading}>
        {currency === "" ? "Value out" : `Value out in ${currency}`}
      </h2>
      <div className={mergeClasses(styles.figure, cover.is === "over" && styles.alarm)}>
        {unread.length > 0 && "at least "}
        {sayMoney(valueOut, currency)}
      </div>
      <p className={styles.note}>
        {cover.is === "no limit" && "No cover limit is set. "}
        {cover.is === "within" &&
          `${sayMoney(cover.left, currency)} below the cover of ${sayMoney(cover.limit, currency)} (${Math.round(cover.share * 100)} % used). `}
        {cover.is === "over" &&
          `Over the cover of ${sayMoney(cover.limit, currency)} by ${sayMoney(cover.overBy, currency)}. `}
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
      {unread.length > 0 && (
        <>
          <p className={styles.note}>Left out, since the row cannot be read:</p>
          <LineList of={unread} toLine={(line) => ({ ...line, fact: "", more: line.sentence })} />
        </>
      )}
      <LimitForm currency={currency} limits={limits} />
      <ValuePicture value={value} asOf={asOf} limit={limit} />
    </section>
  );
}

function saySpan({ from, until, value, overBy }: CoverSpan, currency: string): string {
  const days =
    until === from ? sayDay(from) : `${sayDay(from)} until ${until === null ? "all is back" : sayDay(until)}`;
  return `${days}: up to ${sayMoney(value, currency)}, over by ${sayMoney(overBy, currency)}`;
}

function LimitForm({ currency, limits }: { readonly currency: string; readonly limits: CoverLimits }) {
  const styles = useTodayStyles();
  const { actions } = usePane();
  const kept = limits.get(currency);
  const keptText = kept === undefined ? "" : String(kept);
  const [typed, setTyped] = useState(keptText);
  const [complaint, setComplaint] = useState<string | null>(null);
  useEffect(() => setTyped(keptText), [keptText]);

  const set = (): void => {
    const limit = readLimit(typed, currency);
    if (!limit.ok) {
      setComplaint(sayProblem(limit.problem));
      return;
    }
    setComplaint(null);
    const changed = new Map(limits);
    if (limit.value === null) changed.delete(currency);
    else changed.set(currency, limit.value);
    void actions.keep(coverKey, coverText(changed));
  };

  return (
    <form
      className={styles.limit}
      onSubmit={(event) => {
        event.preventDefault();
        set();
      }}
    >
      <Field
        className={styles.limitField}
        label={currency === "" ? "Cover limit" : `Cover limit in ${currency}`}
        hint="Kept in this workbook."
        validationState={complaint === null ? "none" : "error"}
        validationMessage={complaint ?? undefined}
      >
        <Input
          className={styles.limitInput}
          inputMode="decimal"
          value={typed}
          onChange={(_, { value }) => setTyped(value)}
          contentAfter={
            <Button type="submit" size="small" appearance="subtle" disabledFocusable={typed === keptText}>
              Set
            </Button>
          }
        />
      </Field>
    </form>
  );
}
