import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { LineList } from "./LineList";
import type { RequestLine } from "./RequestLine";
import { TodaySection } from "./TodaySection";

/** What is lent and waits to be fetched. */
export function CollectSection({ collect, asOf }: { readonly collect: readonly RequestLine[]; readonly asOf: number }) {
  const isPast = ({ neededBy }: RequestLine): boolean => neededBy !== null && neededBy < asOf;
  return (
    <TodaySection
      id="collect"
      heading={
        collect.length === 0 ? "Nothing to collect" : `To collect: ${sayCount(collect.length, "request", "requests")}`
      }
      isAlarm={collect.some(isPast)}
    >
      <LineList
        of={collect}
        toLine={(line) => ({
          ...line,
          name: line.lender,
          fact: line.neededBy === null ? "no day of need" : `needed ${sayDay(line.neededBy)}`,
          more: [
            isPast(line) ? "the day of need is past" : "",
            line.wanted,
            line.collect,
            line.contact === "" ? "" : `ask for ${line.contact}`,
          ]
            .filter((part) => part !== "")
            .join(" · "),
        })}
      />
    </TodaySection>
  );
}
