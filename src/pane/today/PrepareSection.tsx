import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { LineList } from "./LineList";
import type { PrepareLine } from "./preparesToday";
import { TodaySection } from "./TodaySection";

/** What is to be undone before pieces go back. */
export function PrepareSection({ prepares }: { readonly prepares: readonly PrepareLine[] }) {
  const heading =
    prepares.length === 0
      ? "Nothing to undo before a return"
      : `To undo before returns: ${sayCount(prepares.length, "piece", "pieces")}`;
  return (
    <TodaySection id="prepare" heading={heading}>
      <LineList
        of={prepares}
        toLine={(line) => ({
          ...line,
          fact: `${line.isSent ? "send by" : "due"} ${sayDay(line.goes)}`,
          more: [line.tasks.join("; "), line.lender].filter((part) => part !== "").join(" · "),
        })}
      />
    </TodaySection>
  );
}
