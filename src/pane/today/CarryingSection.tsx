import { mergeClasses } from "@fluentui/react-components";
import { carryingAdvice } from "../../domain/carry/carryingAdvice";
import type { CarryingCaution } from "../../domain/carry/carryingCaution";
import { sayCarryingCaution } from "../../domain/carry/sayCarryingCaution";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { sayWeight } from "../sayWeight";
import type { CarriedLoad, CarryGroup, CarryPart } from "./CarryGroup";
import { LineList } from "./LineList";
import { TodaySection } from "./TodaySection";
import { useTodayStyles } from "./useTodayStyles";

function sayLoad({ weighedGrams, estimatedGrams }: CarriedLoad): string {
  if (estimatedGrams === 0) return "all weighed";
  if (weighedGrams === 0) return "all estimated by kind or a typed guess";
  return `${sayWeight(weighedGrams)} weighed, ${sayWeight(estimatedGrams)} estimated by kind or a typed guess`;
}

function Caution({ of }: { readonly of: CarryingCaution }) {
  const styles = useTodayStyles();
  return <p className={mergeClasses(styles.note, styles.alarm)}>{`Caution: ${sayCarryingCaution(of)}`}</p>;
}

/** What there is to carry back on the day and on the next, by lender and bag by bag. */
export function CarryingSection({ groups, asOf }: { readonly groups: readonly CarryGroup[]; readonly asOf: number }) {
  const styles = useTodayStyles();
  const toLine = (none: string) => (part: CarryPart) => ({
    ...part,
    name: part.name === "" ? none : part.name,
    fact: sayWeight(part.weighedGrams + part.estimatedGrams),
    more: [
      sayCount(part.pieces, "piece", "pieces"),
      sayLoad(part),
      part.caution === null ? "" : `caution: ${sayCarryingCaution(part.caution)}`,
    ]
      .filter((each) => each !== "")
      .join(" · "),
  });
  return (
    <TodaySection id="carrying" heading={groups.length === 0 ? "Nothing to carry back" : "To carry back"}>
      {groups.map((group) => {
        const { day, pieces, weighedGrams, estimatedGrams, caution, lenders, bags, untold } = group;
        return (
          <div key={day}>
            <h3 className={styles.part}>
              {`${day === asOf ? "On the day, with what is late" : `Next, ${sayDay(day)}`}: ${sayCount(pieces, "piece", "pieces")}`}
            </h3>
            <div className={styles.figure}>
              {untold.length > 0 && "at least "}
              {sayWeight(weighedGrams + estimatedGrams)}
            </div>
            <p className={styles.note}>{`${sayLoad(group)}; without hangers, covers and the bags themselves.`}</p>
            {caution !== null && <Caution of={caution} />}
            {bags !== null && (
              <>
                <h4 className={styles.part}>Bag by bag</h4>
                <LineList of={bags} toLine={toLine("in no bag yet")} />
              </>
            )}
            <h4 className={styles.part}>By lender</h4>
            <LineList of={lenders} toLine={toLine("no lender")} />
            {untold.length > 0 && (
              <>
                <h4 className={styles.part}>{`Not weighed: ${sayCount(untold.length, "row", "rows")}`}</h4>
                <LineList of={untold} toLine={(line) => ({ ...line, fact: "", more: line.sentence })} />
              </>
            )}
          </div>
        );
      })}
      {groups.length > 0 && (
        <p className={styles.note}>
          {`${carryingAdvice} An estimate may be far off, and where no caution stands the load is not thereby safe: split what feels heavy.`}
        </p>
      )}
    </TodaySection>
  );
}
