import { useSplitFindings } from "../check/useSplitFindings";
import { sayCount } from "../sayCount";
import { LineList } from "./LineList";
import type { PieceTable } from "./PieceTable";
import { TodaySection } from "./TodaySection";
import { unprovedToday } from "./unprovedToday";

/** Pieces that are back with no name or number to show for it. */
export function UnprovedSection({ pieces }: { readonly pieces: readonly PieceTable[] }) {
  const split = useSplitFindings();
  const lines = unprovedToday(pieces, split === null ? null : split.open.map(({ finding }) => finding));
  if (lines === null) return null;
  return (
    <TodaySection
      id="unproved"
      heading={
        lines.length === 0
          ? "Every return has its proof"
          : `Back without proof of return: ${sayCount(lines.length, "piece", "pieces")}`
      }
    >
      <LineList of={lines} toLine={(line) => ({ ...line, fact: "", more: line.sentence })} />
    </TodaySection>
  );
}
