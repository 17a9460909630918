import { useMemo, useReducer, useRef } from "react";
import { sayProblem } from "../../domain/wording";
import { NoTables } from "../frame/NoTables";
import { usePane } from "../frame/usePane";
import { callsKey } from "../today/callsKey";
import { looksToday } from "../today/looksToday";
import { parseCalls } from "../today/parseCalls";
import { pieceTables } from "../today/pieceTables";
import { calendarKey } from "./calendarKey";
import { DocumentActions } from "./DocumentActions";
import { DocumentChoices } from "./DocumentChoices";
import { documentKinds } from "./documents/documentKinds";
import { GapList } from "./GapList";
import type { HandOverState } from "./HandOverState";
import { handOverReducer, initialHandOverState } from "./handOverReducer";
import { jobKey } from "./job/jobKey";
import { JobForm } from "./JobForm";
import { jobOf } from "./job/jobOf";
import { parseJob } from "./job/parseJob";
import { useSheetPictures } from "./pictures/useSheetPictures";
import { paperHtml } from "./paper/paperHtml";
import { PaperPreview } from "./PaperPreview";
import { parseCalendar } from "./parseCalendar";
import { readBagLimit } from "./readBagLimit";
import { useHandOverStyles } from "./useHandOverStyles";

const NO_PICTURES: HandOverState["pictures"] = [];

/** What one gives away: letters, slips, lists, cards and dates, each looked at before it is printed or saved. */
export function HandOverView() {
  const styles = useHandOverStyles();
  const { read, asOf, kept } = usePane().state;
  const [chosen, dispatch] = useReducer(handOverReducer, initialHandOverState);
  // Made once, and kept in the workbook with the first calendar that is saved.
  const freshId = useRef<string>();
  freshId.current ??= crypto.randomUUID();
  const calendarKept = kept[calendarKey] ?? null;
  const calendar = useMemo(
    () => parseCalendar(calendarKept) ?? { id: freshId.current ?? "", savedCount: 0 },
    [calendarKept],
  );
  const callsKept = kept[callsKey] ?? null;
  const jobKept = kept[jobKey] ?? null;
  const pieces = useMemo(() => pieceTables(read?.tables ?? []), [read]);
  const looks = useMemo(
    () => (read === null ? null : looksToday(read, asOf, chosen.day, parseCalls(callsKept))),
    [read, asOf, chosen.day, callsKept],
  );
  const job = useMemo(() => (read === null ? null : jobOf(read.workbook, parseJob(jobKept))), [read, jobKept]);
  const limit = useMemo(() => readBagLimit(chosen.bagLimitTyped), [chosen.bagLimitTyped]);
  const lastLimit = useRef(0);
  if (limit.ok) lastLimit.current = limit.value;
  const bagLimitGrams = lastLimit.current;
  const kind = documentKinds.find(({ id }) => id === chosen.kindId) ?? documentKinds[0];
  const { lenderKey, paperSize, isPictured } = chosen;
  const isShown = kind?.sheetPictures === "shown" || (kind?.sheetPictures === "asked" && isPictured);
  const ofSheets = useSheetPictures(isShown, read?.workbook ?? null);
  // Pictures that are not wished are not looked for among the files either.
  const pictures = kind?.sheetPictures === "asked" && !isPictured ? NO_PICTURES : chosen.pictures;
  const made = useMemo(() => {
    if (read === null || job === null || kind === undefined) return null;
    const document = kind.make({
      read,
      pieces,
      looks,
      asOf,
      job,
      pictures,
      sheetPictures: ofSheets.shown,
      lenderKey,
      bagLimitGrams,
      calendarId: calendar.id,
    });
    return { document, html: paperHtml(document.paper, paperSize) };
  }, [read, pieces, looks, asOf, job, pictures, ofSheets.shown, lenderKey, bagLimitGrams, calendar, kind, paperSize]);

  if (read === null || job === null || made === null || kind === undefined) return null;
  if (read.tables.length === 0) return <NoTables />;
  const { document, html } = made;
  const preview = document.ownFile?.kind === "page" ? document.ownFile.preview : html;
  return (
    <>
      <DocumentChoices
        kind={kind}
        chosen={chosen}
        read={read}
        looks={looks}
        picturesOnSheets={ofSheets}
        bagComplaint={limit.ok ? null : sayProblem(limit.problem)}
        dispatch={dispatch}
      />
      <JobForm job={job} />
      <h2 className={styles.heading}>{document.paper.title}</h2>
      <GapList key={kind.id} missing={[...document.missing, ...ofSheets.missing]} />
      <DocumentActions key={`${kind.id} actions`} document={document} html={html} calendar={calendar} />
      {document.paper.pages.length > 0 && <PaperPreview title={document.paper.title} html={preview} />}
      <p className={styles.about}>
        Nothing leaves the workbook but what you print, copy or save. Where no print window opens, save the page and
        print it from a browser.
      </p>
    </>
  );
}
