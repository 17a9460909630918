import { useMemo } from "react";
import type { CoverNote } from "../../sheet/coverNote";
import { coversUnread } from "./coversUnread";
import { LineList } from "./LineList";
import { TodaySection } from "./TodaySection";

/** What the workbook says of its cover and cannot be used, so that no limit is taken for none. */
export function CoverUnread({
  notes,
  currencies,
}: {
  readonly notes: readonly CoverNote[];
  readonly currencies: readonly string[];
}) {
  const unread = useMemo(() => coversUnread(notes, currencies), [notes, currencies]);
  if (unread.length === 0) return null;
  return (
    <TodaySection id="cover-unread" heading="A cover limit that cannot be used">
      <LineList
        of={unread}
        toLine={({ note: { at, sheetName, heading }, sentence }) => ({
          at,
          sheetName,
          name: heading.trim(),
          fact: "",
          more: sentence,
        })}
      />
    </TodaySection>
  );
}
