import { useMemo, useState } from "react";
import { readCoverNotes } from "../../sheet/readCoverNotes";
import { NoTables } from "../frame/NoTables";
import { usePane } from "../frame/usePane";
import { CarryingSection } from "./CarryingSection";
import { carryingToday } from "./carryingToday";
import { ChaseSection } from "./ChaseSection";
import { CollectSection } from "./CollectSection";
import { callsKey } from "./callsKey";
import { coverKey } from "./coverKey";
import { CoverUnread } from "./CoverUnread";
import { DayChooser } from "./DayChooser";
import { FittingsSection } from "./FittingsSection";
import { fittingsToday } from "./fittingsToday";
import { LoansSections } from "./LoansSections";
import { isOutFrom } from "./isOutFrom";
import { loansToday } from "./loansToday";
import { LooksSection } from "./LooksSection";
import { looksToday } from "./looksToday";
import { parseCalls } from "./parseCalls";
import { parseCover } from "./parseCover";
import { pieceTables } from "./pieceTables";
import { PrepareSection } from "./PrepareSection";
import { preparesToday } from "./preparesToday";
import { RefundsSection } from "./RefundsSection";
import { refundsToday } from "./refundsToday";
import { requestsToday } from "./requestsToday";
import { SendSection } from "./SendSection";
import { sendsToday } from "./sendsToday";
import { UnprovedSection } from "./UnprovedSection";
import { useTodayStyles } from "./useTodayStyles";
import { ValueSection } from "./ValueSection";
import { valueToday } from "./valueToday";

/**
 * The day at a glance, the most urgent first: what goes back, whom to chase, what is to be undone before a return, what to send, to
 * fetch and to refund, what there is to carry, what is out against the cover, and which look is next.
 */
export function TodayView() {
  const styles = useTodayStyles();
  const { read, asOf, kept } = usePane().state;
  const [wantedDay, setWantedDay] = useState<number | null>(null);
  const callsKept = kept[callsKey] ?? null;
  const coverKept = kept[coverKey] ?? null;
  const typedCalls = useMemo(() => parseCalls(callsKept), [callsKept]);
  const limits = useMemo(() => parseCover(coverKept), [coverKept]);
  const pieces = useMemo(() => pieceTables(read?.tables ?? []), [read]);
  const loans = useMemo(() => loansToday(pieces, asOf), [pieces, asOf]);
  const values = useMemo(() => valueToday(pieces, asOf), [pieces, asOf]);
  const valuesShown = values.filter((value) => isOutFrom(value, asOf));
  const sends = useMemo(() => (read === null ? null : sendsToday(pieces, read, asOf)), [pieces, read, asOf]);
  const requests = useMemo(() => (read === null ? null : requestsToday(read, asOf)), [read, asOf]);
  const refunds = useMemo(() => refundsToday(read?.tables ?? [], asOf), [read, asOf]);
  const prepares = useMemo(() => preparesToday(pieces, sends, asOf), [pieces, sends, asOf]);
  const fittings = useMemo(() => fittingsToday(pieces, asOf), [pieces, asOf]);
  const carrying = useMemo(() => carryingToday(pieces, asOf), [pieces, asOf]);
  const covers = useMemo(() => (read === null ? [] : readCoverNotes(read.workbook.sheets, read.tables)), [read]);
  const looks = useMemo(
    () => (read === null ? null : looksToday(read, asOf, wantedDay, typedCalls)),
    [read, asOf, wantedDay, typedCalls],
  );

  if (read === null) return null;
  if (read.tables.length === 0) return <NoTables />;
  return (
    <>
      <DayChooser />
      {pieces.length === 0 ? (
        <p className={styles.note}>
          No table of pieces was read, so nothing can be said of loans and value. A row of headings such as Piece,
          Lender, Value, Out, Due, Back makes one.
        </p>
      ) : (
        <LoansSections loans={loans} />
      )}
      {requests !== null && <ChaseSection requests={requests} asOf={asOf} />}
      {prepares !== null && <PrepareSection prepares={prepares} />}
      {pieces.length > 0 && sends !== null && <SendSection sends={sends} asOf={asOf} />}
      {requests !== null && requests.collect !== null && <CollectSection collect={requests.collect} asOf={asOf} />}
      {refunds !== null && <RefundsSection refunds={refunds} />}
      {fittings !== null && <FittingsSection fittings={fittings} />}
      <UnprovedSection pieces={pieces} />
      {carrying !== null && <CarryingSection groups={carrying} asOf={asOf} />}
      <CoverUnread notes={covers} currencies={values.map(({ currency }) => currency)} />
      {valuesShown.map((value) => (
        <ValueSection
          key={value.currency}
          value={value}
          limits={limits}
          notes={covers}
          isOnlyCurrency={values.length === 1}
          pieces={pieces}
          asOf={asOf}
        />
      ))}
      {pieces.length > 0 && valuesShown.length === 0 && (
        <p className={styles.note}>Nothing is out, so no value is at risk.</p>
      )}
      {looks !== null && <LooksSection looks={looks} typedCalls={typedCalls} asOf={asOf} onDay={setWantedDay} />}
    </>
  );
}
