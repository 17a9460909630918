import { Button, Field, Input, Select } from "@fluentui/react-components";
import { useState } from "react";
import { sayProblem } from "../../domain/wording";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { GoToCell } from "../frame/GoToCell";
import { useNow } from "../frame/useNow";
import { usePane } from "../frame/usePane";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { sayMinutes } from "../sayMinutes";
import { sayClock } from "../../domain/sayClock";
import { callsKey } from "./callsKey";
import { callsText } from "./callsText";
import { DayPicture } from "./DayPicture";
import { LineList } from "./LineList";
import type { LookLine, DayLooks } from "./DayLooks";
import { nameLook } from "./nameLook";
import { NextLookTime } from "./NextLookTime";
import { sayPastDay } from "./sayPastDay";
import { TryOrder } from "./TryOrder";
import { useTodayStyles } from "./useTodayStyles";

interface LooksSectionProps {
  readonly looks: DayLooks;
  readonly typedCalls: ReadonlyMap<number, number>;
  readonly asOf: number;
  readonly onDay: (day: number) => void;
}

/** The next look to get ready, those after it, and how the day ends. */
export function LooksSection({ looks, typedCalls, asOf, onDay }: LooksSectionProps) {
  const styles = useTodayStyles();
  const { today } = usePane().state;
  const { day, days, lines, sentence, plan } = looks;
  const isPast = day !== null && day < asOf;
  const now = useNow(asOf === today && (day === null || day === today));
  const next = lines.find(({ isShot }) => !isShot);
  const later = next === undefined ? [] : lines.slice(lines.indexOf(next) + 1);
  return (
    <section className={styles.section} aria-labelledby="today-looks">
      <h2 id="today-looks" className={styles.heading}>
        {next === undefined
          ? lines.length === 0
            ? "No look can be told"
            : "Every look is shot"
          : `${isPast ? "Looks" : "Next look"}${day === null ? "" : `, ${sayDay(day)}`}`}
      </h2>
      {isPast && <p className={styles.note}>{sayPastDay(days, asOf)}</p>}
      {days.length > 1 && (
        <Select
          className={styles.chooser}
          aria-label="Day of the looks"
          size="small"
          value={String(day ?? "")}
          onChange={(_, { value }) => onDay(Number(value))}
        >
          {days.map((each) => (
            <option key={each} value={each}>
              {sayDay(each)}
            </option>
          ))}
        </Select>
      )}
      {sentence !== null && <p className={styles.note}>{sentence}</p>}
      {next !== undefined && <LineList of={[next]} toLine={toLine} />}
      {next !== undefined && looks.given !== null && (
        <NextLookTime key={`time ${day ?? ""}`} day={looks.given.day} clock={now} />
      )}
      {lines.length > 0 && looks.callPlace === null && <CallForm key={day} day={day} typedCalls={typedCalls} />}
      {plan !== null && lines.length > 0 && <DayEnd looks={looks} />}
      {plan !== null && plan.looks.length > 0 && <DayPicture plan={plan} wrap={looks.wrap?.value ?? null} now={now} />}
      {looks.given !== null && lines.filter(({ isShot }) => !isShot).length > 1 && (
        <TryOrder
          key={`order ${day ?? ""}`}
          table={looks.given.table}
          given={looks.given.day}
          looks={looks.given.looks}
          wrap={looks.wrap?.value ?? null}
        />
      )}
      {later.length > 0 && (
        <>
          <h3 className={styles.part}>{`After it: ${sayCount(later.length, "look", "looks")}`}</h3>
          <LineList of={later} toLine={toLine} />
        </>
      )}
    </section>
  );
}

function toLine({ at, sheetName, label, talent, times }: LookLine) {
  const more =
    times === null
      ? ""
      : `Change from ${sayClock(times.changeFrom)}, ready by ${sayClock(times.readyBy)}, ${sayMinutes(times.minutesSpare)} spare; waits for ${times.waitsFor}`;
  return {
    at,
    sheetName,
    name: nameLook(label, talent),
    fact: times === null ? "" : `${sayClock(times.shootFrom)}–${sayClock(times.shootUntil)}`,
    more,
  };
}

function DayEnd({ looks }: { readonly looks: DayLooks }) {
  const styles = useTodayStyles();
  const { plan, call, callPlace, wrap: wrapSaid, crew, minutesSpareAtWrap: spare } = looks;
  if (plan === null || call === null) return null;
  const wrap =
    wrapSaid === null || spare === null
      ? ""
      : spare < 0
        ? `, ${sayMinutes(-spare)} after the wrap at ${sayClock(wrapSaid.value)}`
        : `, ${sayMinutes(spare)} before the wrap at ${sayClock(wrapSaid.value)}`;
  return (
    <p className={styles.note}>
      The last shot ends at {sayClock(plan.ends)}
      {wrap}.{" "}
      {plan.meal !== null &&
        `Meal ${sayClock(plan.meal.from)} to ${sayClock(plan.meal.until)}${
          plan.meal.minutesLate > 0 ? `, ${sayMinutes(plan.meal.minutesLate)} late` : ""
        }. `}
      Counted from the call at {sayClock(call)}
      {callPlace !== null && (
        <>
          {" "}
          (<GoToCell at={callPlace.at} sheetName={callPlace.sheetName} />)
        </>
      )}
      {crew.place === null ? (
        ", with one dresser, one chair and one camera."
      ) : (
        <>
          {", with the people at "}
          <GoToCell at={crew.place.at} sheetName={crew.place.sheetName} />.
        </>
      )}
    </p>
  );
}

function CallForm({
  day,
  typedCalls,
}: {
  readonly day: number | null;
  readonly typedCalls: ReadonlyMap<number, number>;
}) {
  const styles = useTodayStyles();
  const { actions } = usePane();
  const kept = typedCalls.get(day ?? 0);
  const [typed, setTyped] = useState(kept === undefined ? "" : sayClock(kept));
  const [complaint, setComplaint] = useState<string | null>(null);
  return (
    <form
      className={styles.limit}
      onSubmit={(event) => {
        event.preventDefault();
        const call = readTimeOfDay(typed, "Call");
        if (!call.ok) setComplaint(sayProblem(call.problem));
        else if (call.value !== null) {
          setComplaint(null);
          void actions.keep(callsKey, callsText(new Map(typedCalls).set(day ?? 0, call.value)));
        }
      }}
    >
      <Field
        className={styles.limitField}
        label="Call"
        hint="No call for this day is in the workbook. Type it, such as 08:00, to see the times."
        validationState={complaint === null ? "none" : "error"}
        validationMessage={complaint ?? undefined}
      >
        <Input
          className={styles.limitInput}
          value={typed}
          onChange={(_, { value }) => setTyped(value)}
          contentAfter={
            <Button type="submit" size="small" appearance="subtle">
              Set
            </Button>
          }
        />
      </Field>
    </form>
  );
}
