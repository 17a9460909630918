import { Button, mergeClasses } from "@fluentui/react-components";
import { ArrowDownRegular, ArrowUpRegular } from "@fluentui/react-icons";
import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import type { Day } from "../../domain/day/day";
import type { Look } from "../../domain/day/look";
import { lookOrderStepwise } from "../../domain/day/lookOrderStepwise";
import { sayProblem } from "../../domain/wording";
import type { SheetTable } from "../../sheet/sheetTable";
import { FixPreview } from "../check/FixPreview";
import { usePane } from "../frame/usePane";
import { inSlices } from "../state/inSlices";
import { sayClock } from "../../domain/sayClock";
import { dayInOrder } from "./dayInOrder";
import { movedLook } from "./movedLook";
import { nameLook } from "./nameLook";
import { orderEdits } from "./orderEdits";
import { sayBestOrder } from "./sayBestOrder";
import { sayTriedEnd } from "./sayTriedEnd";
import { useTryOrderStyles } from "./useTryOrderStyles";

export interface OrderTrialProps {
  readonly table: SheetTable;
  readonly given: Day;
  /** In the order given. */
  readonly looks: readonly Look[];
  /** Fraction of a day; null where not known. */
  readonly wrap: number | null;
}

interface BestFound {
  readonly keys: string;
  readonly said: string;
}

/** The looks of the day to be put in another order, with what it comes to at once. Nothing is written until asked for. */
export function OrderTrial({ table, given, looks, wrap }: OrderTrialProps) {
  const styles = useTryOrderStyles();
  const { state, actions } = usePane();
  const givenKeys = useMemo(() => looks.map(({ key }) => key), [looks]);
  const [wanted, setWanted] = useState<readonly string[]>(givenKeys);
  const [best, setBest] = useState<BestFound | null>(null);
  const [isSearching, setSearching] = useState(false);
  /** Counts searches, so that one whose day or order has changed meanwhile is left off. */
  const search = useRef(0);
  const [isAsking, setAsking] = useState(false);
  const [dragged, setDragged] = useState<string | null>(null);
  const list = useRef<HTMLOListElement>(null);
  const focus = useRef<string | null>(null);
  // A look that came or went meanwhile: what was tried is no order of this day any more.
  const isOfDay = wanted.length === givenKeys.length && givenKeys.every((key) => wanted.includes(key));
  const keys = isOfDay ? wanted : givenKeys;
  const tried = useMemo(() => dayInOrder(given, keys, wrap), [given, keys, wrap]);
  const shotCount = tried.looks.filter(({ shotAt }) => shotAt !== null).length;
  const isGiven = keys.every((key, place) => key === givenKeys[place]);
  const edits = orderEdits(
    table,
    tried.looks.map((look) => looks.find(({ key }) => key === look.key) ?? look),
  );

  useEffect(() => {
    // A button that moves in the page loses the focus.
    if (focus.current === null) return;
    list.current?.querySelector<HTMLElement>(`[data-mover="${CSS.escape(focus.current)}"]`)?.focus();
    focus.current = null;
  }, [keys]);

  const stopSearch = useCallback((): void => {
    search.current++;
    setSearching(false);
  }, []);
  // What is sought for a day that has changed, or that nobody looks at any more, is of no use.
  useEffect(() => stopSearch, [given, stopSearch]);

  const want = (order: readonly string[]): void => {
    stopSearch();
    setAsking(false);
    setWanted(order);
  };
  const move = (key: string, place: number): void => want(movedLook(keys, key, place, shotCount));
  const findBest = async (): Promise<void> => {
    const mine = ++search.current;
    setSearching(true);
    const found = await inSlices(lookOrderStepwise(given), () => search.current === mine);
    if (found === null) return;
    setSearching(false);
    setAsking(false);
    if (!found.ok) return setBest({ keys: keys.join("\n"), said: sayProblem(found.problem) });
    const bestKeys = found.value.plan.looks.map(({ look }) => look.key);
    setWanted(bestKeys);
    setBest({ keys: bestKeys.join("\n"), said: sayBestOrder(found.value) });
  };
  const write = async (): Promise<void> => {
    if (edits === null) return;
    setAsking(false);
    await actions.write(`Order of ${edits.length === 1 ? "1 look" : `${edits.length} looks`}`, edits);
  };

  return (
    <>
      <ol ref={list} className={styles.list} aria-label="Looks in the order tried">
        {tried.looks.map((look, place) => {
          const name = nameLook(look.label, look.talentText);
          const shot = tried.shots?.[place];
          const isShot = place < shotCount;
          const mover = (to: number, word: "earlier" | "later") => ({
            size: "small" as const,
            "aria-label": `${name}: ${word}`,
            title: word === "earlier" ? "Earlier" : "Later",
            "data-mover": `${look.key} ${word}`,
            disabledFocusable: isShot || to < shotCount || to >= keys.length,
            className: styles.mover,
            onClick: () => {
              focus.current = `${look.key} ${word}`;
              move(look.key, to);
            },
          });
          return (
            <li
              key={look.key}
              className={mergeClasses(styles.look, dragged === look.key && styles.dragged)}
              draggable={!isShot}
              onDragStart={(event) => {
                event.dataTransfer.effectAllowed = "move";
                setDragged(look.key);
              }}
              onDragEnd={() => setDragged(null)}
              onDragOver={(event) => {
                if (dragged !== null) event.preventDefault();
              }}
              onDrop={(event) => {
                event.preventDefault();
                if (dragged !== null) move(dragged, place);
                setDragged(null);
              }}
            >
              <span className={styles.name}>
                {`${place + 1}. ${name}`}
                {shot !== undefined && (
                  <span className={styles.time}>{` ${sayClock(shot.from)}–${sayClock(shot.until)}`}</span>
                )}
                {isShot && " (shot)"}
              </span>
              <Button icon={<ArrowUpRegular />} {...mover(place - 1, "earlier")} />
              <Button icon={<ArrowDownRegular />} {...mover(place + 1, "later")} />
            </li>
          );
        })}
      </ol>
      <p aria-live="polite" className={styles.result}>
        {isSearching ? "Looking for the best order… " : ""}
        {sayTriedEnd(tried, wrap, isGiven)}
        {best !== null && best.keys === keys.join("\n") && ` ${best.said}`}
      </p>
      <div className={styles.actions}>
        <Button size="small" className={styles.action} onClick={() => (isSearching ? stopSearch() : void findBest())}>
          {isSearching ? "Stop looking" : "Best order found"}
        </Button>
        <Button size="small" className={styles.action} disabledFocusable={isGiven} onClick={() => want(givenKeys)}>
          Back to the order given
        </Button>
        {!isAsking && (
          <Button
            size="small"
            appearance="primary"
            className={styles.action}
            disabledFocusable={tried.shots === null || edits === null || edits.length === 0}
            onClick={() => setAsking(true)}
          >
            Write this order to the sheet…
          </Button>
        )}
      </div>
      {edits === null && (
        <p className={styles.result}>The looks have no Order column to write to: add one, headed Order.</p>
      )}
      {isAsking && edits !== null && (
        <FixPreview
          fixes={{ edits, leftOut: 0 }}
          tables={state.read?.tables ?? []}
          sheetNames={new Map([[table.sheetId, table.sheetName]])}
          onWrite={() => void write()}
          onCancel={() => setAsking(false)}
        />
      )}
    </>
  );
}
