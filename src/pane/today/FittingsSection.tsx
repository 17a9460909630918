import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import type { FittingLine } from "./fittingsToday";
import { LineList } from "./LineList";
import { TodaySection } from "./TodaySection";

/** What is fitted on the day and in the days after. */
export function FittingsSection({ fittings }: { readonly fittings: readonly FittingLine[] }) {
  return (
    <TodaySection
      id="fittings"
      heading={
        fittings.length === 0 ? "No fittings soon" : `To fit soon: ${sayCount(fittings.length, "piece", "pieces")}`
      }
    >
      <LineList
        of={fittings}
        toLine={(line) => ({
          ...line,
          fact: sayDay(line.day),
          more: [line.talent, line.look === "" ? "" : `look ${line.look}`].filter((part) => part !== "").join(" · "),
        })}
      />
    </TodaySection>
  );
}
