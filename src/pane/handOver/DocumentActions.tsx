import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { usePane } from "../frame/usePane";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { calendarKey } from "./calendarKey";
import type { HandOverDocument, LenderLetter } from "./documents/HandOverDocument";
import { calendarText } from "./files/calendarText";
import { csvText } from "./files/csvText";
import { draftsFile } from "./files/draftsFile";
import type { HandOverFile } from "./files/HandOverFile";
import { safeFileName } from "./files/safeFileName";
import { saveFile } from "./files/saveFile";
import { NewSheetAction } from "./NewSheetAction";
import type { CalendarKept } from "./parseCalendar";
import { printPaper } from "./printPaper";
import { useHandOverStyles } from "./useHandOverStyles";

interface DocumentActionsProps {
  readonly document: HandOverDocument;
  readonly html: string;
  readonly calendar: CalendarKept;
}

/** What can be done with a document: print it, save it in each of its forms, copy letters, note requests as asked. */
export function DocumentActions({ document: of, html, calendar }: DocumentActionsProps) {
  const styles = useHandOverStyles();
  const { state, actions } = usePane();
  const [said, setSaid] = useState("");
  const { title } = of.paper;
  const { table, ownFile } = of;

  const save = (file: HandOverFile): void => {
    saveFile(file);
    setSaid(`${file.name} was handed to the browser to save.`);
  };
  const copy = async (letters: readonly LenderLetter[]): Promise<void> => {
    const text = letters.map(({ subject, body }) => `${subject}\n\n${body}`).join("\n\n\n");
    try {
      await navigator.clipboard.writeText(text);
      setSaid("Copied.");
    } catch {
      save({ name: safeFileName(title, "txt"), type: "text/plain;charset=utf-8", content: text });
    }
  };
  const action = (label: string, onClick: () => void, isFirst = false) => (
    <Button key={label} className={styles.action} appearance={isFirst ? "primary" : "secondary"} onClick={onClick}>
      {label}
    </Button>
  );
  if (of.paper.pages.length === 0) return null;
  return (
    <>
      <div className={styles.actions}>
        {action("Print…", () => printPaper(html), true)}
        {ownFile?.kind === "calendar" &&
          action("Save for a calendar", () => {
            // Counted in the workbook, so that a calendar takes a later file for the newer; without that it is saved all the same.
            const savedCount = calendar.savedCount + 1;
            void actions.keep(calendarKey, JSON.stringify({ id: calendar.id, savedCount })).then(() =>
              save({
                name: safeFileName(title, "ics"),
                type: "text/calendar;charset=utf-8",
                content: calendarText(ownFile.events, state.today, savedCount),
              }),
            );
          })}
        {ownFile?.kind === "page" &&
          action("Save for a phone", () =>
            save({ name: safeFileName(title, "html"), type: "text/html;charset=utf-8", content: ownFile.html }),
          )}
        {ownFile?.kind === "letters" && (
          <>
            {action("Copy the text", () => void copy(ownFile.letters))}
            {action(ownFile.letters.length === 1 ? "Save as a mail draft" : "Save as mail drafts", () =>
              save(draftsFile(ownFile.letters, title)),
            )}
          </>
        )}
        {table !== null &&
          action("Save as values (CSV)", () =>
            save({ name: safeFileName(title, "csv"), type: "text/csv;charset=utf-8", content: csvText(table) }),
          )}
        {table !== null && <NewSheetAction title={title} table={table} />}
        {ownFile?.kind !== "page" &&
          action("Save as a page", () =>
            save({ name: safeFileName(title, "html"), type: "text/html;charset=utf-8", content: html }),
          )}
      </div>
      {ownFile?.kind === "letters" && <NoteAsked letters={ownFile.letters} />}
      <p aria-live="polite" className={styles.about}>
        {said}
      </p>
    </>
  );
}

function NoteAsked({ letters }: { readonly letters: readonly LenderLetter[] }) {
  const styles = useHandOverStyles();
  const { state, actions } = usePane();
  const edits = letters.flatMap(({ asked }) => asked);
  if (edits.length === 0) return null;
  const label = `${sayCount(edits.length, "request", "requests")} noted as asked on ${sayDay(state.asOf)}`;
  return (
    <div className={styles.actions}>
      <Button className={styles.action} onClick={() => void actions.write(label, edits)}>
        {`Note ${sayCount(edits.length, "request", "requests")} as asked on ${sayDay(state.asOf)}`}
      </Button>
    </div>
  );
}
