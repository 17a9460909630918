import type { WorkbookTables } from "../../sheet/readWorkbook";
import { sayList } from "../sayList";
import { GoToCell } from "./GoToCell";

/** So many headings tell which area is meant. */
const SHOWN_HEADINGS = 6;

/** Areas that look like tables and were not read, each with the reason and the remedy. */
export function UnreadAreas({ unread }: Pick<WorkbookTables, "unread">) {
  if (unread.length === 0) return null;
  return (
    <>
      <p>Looked at and not read:</p>
      <ul>
        {unread.map(({ sheetId, sheetName, row, column, headings, kinds }) => {
          const named = headings.filter((heading) => heading.trim() !== "");
          const shown = named.slice(0, SHOWN_HEADINGS).join(", ") + (named.length > SHOWN_HEADINGS ? "…" : "");
          return (
            <li key={`${sheetId} ${row} ${column}`}>
              <GoToCell at={{ sheetId, row, column }} sheetName={sheetName} />
              {`: ${shown}. `}
              {kinds.length > 1
                ? `It could be a table of ${sayList(kinds).replace(/ and (?=\S+$)/, " or of ")}: add a heading that only one of them has.`
                : "Too few of its headings are understood: rename those that matter."}
            </li>
          );
        })}
      </ul>
    </>
  );
}
