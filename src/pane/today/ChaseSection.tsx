import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { LineList } from "./LineList";
import type { RequestLine } from "./RequestLine";
import type { RequestsToday } from "./requestsToday";
import { TodaySection } from "./TodaySection";
import { useTodayStyles } from "./useTodayStyles";

function sayRequest({ wanted, neededBy, contact }: RequestLine, asOf: number): string {
  return [
    wanted,
    neededBy === null ? "" : `needed by ${sayDay(neededBy)}${neededBy < asOf ? ", which is past" : ""}`,
    contact === "" ? "" : `ask for ${contact}`,
  ]
    .filter((part) => part !== "")
    .join(" · ");
}

/** The requests that nobody has answered for some days, and how many more CHASEROWS lists, which are for the next section. */
export function ChaseSection({ requests, asOf }: { readonly requests: RequestsToday; readonly asOf: number }) {
  const styles = useTodayStyles();
  const { chase, collect, untold } = requests;
  if (chase === null) return null;
  const urgent = collect?.filter(({ isChased }) => isChased).length ?? 0;
  return (
    <TodaySection
      id="chase"
      heading={chase.length === 0 ? "Nothing to chase" : `To chase: ${sayCount(chase.length, "request", "requests")}`}
    >
      <LineList
        of={chase}
        toLine={(line) => ({
          ...line,
          name: line.lender,
          fact: line.asked === null ? "" : `asked ${sayDay(line.asked)}`,
          more: sayRequest(line, asOf),
        })}
      />
      {urgent > 0 && (
        <p className={styles.note}>
          {`CHASEROWS also lists ${sayCount(urgent, "request", "requests")} lent, needed soon or already, and not fetched: below, with what is to be collected.`}
        </p>
      )}
      {untold.length > 0 && (
        <>
          <h3 className={styles.part}>{`Cannot be told: ${sayCount(untold.length, "request", "requests")}`}</h3>
          <LineList of={untold} toLine={(line) => ({ ...line, fact: "", more: line.sentence })} />
        </>
      )}
    </TodaySection>
  );
}
