import { mergeClasses } from "@fluentui/react-components";
import { useId, useMemo, useRef } from "react";
import type { PlannedDay } from "../../domain/day/plannedDay";
import { sayMinutes } from "../sayMinutes";
import { sayClock } from "../../domain/sayClock";
import { dayMarks } from "./dayMarks";
import type { DayBar, DayRow } from "./DayRow";
import { dayRows } from "./dayRows";
import { DayTable } from "./DayTable";
import { spreadLabels } from "./spreadLabels";
import { useDayPictureStyles } from "./useDayPictureStyles";
import { usePictureWidth } from "./usePictureWidth";

const LEAST_WIDTH = 280;
/** Room for the names, and for longer ones where the picture is wide. */
const NAMES = 66;
const LONG_NAMES = 120;
const WIDE = 520;
const LETTER = 6;
const TOP = 18;
/** Where the words above the picture end, and where the lines to their places begin. */
const WORDS = 10;
const ROW = 16;
const BAR = 10;
const FOOT = 16;
/** Between talents and what they need. */
const GAP = 6;
/** A bar so wide has room for the number of its look. */
const NUMBER_WIDTH = 14;
/** Hours so near are written only every other one, or third. */
const LEAST_HOUR_WIDTH = 22;
/** Half of the two figures of an hour: the last stands at the edge, and would be cut through there. */
const HALF_HOUR_WORD = 7;

interface DayPictureProps {
  readonly plan: PlannedDay;
  /** Fractions of a day; null where not known. */
  readonly wrap: number | null;
  readonly now: number | null;
}

/**
 * The day as a row a talent, with chairs, dressers and cameras below; the meal is a band, wrap and now are lines.
 * Kinds differ by pattern and not by colour; the same times stand in the table below.
 */
export function DayPicture({ plan, wrap, now }: DayPictureProps) {
  const styles = useDayPictureStyles();
  const hatch = useId();
  const rows = useMemo(() => dayRows(plan), [plan]);
  const marks = dayMarks(plan, wrap, now);
  const picture = useRef<SVGSVGElement>(null);
  const width = usePictureWidth(picture, LEAST_WIDTH);
  const left = width < WIDE ? NAMES : LONG_NAMES;
  const x = (time: number): number => left + ((time - marks.from) / (marks.until - marks.from)) * (width - left - 2);
  const talentCount = rows.filter(({ isTalent }) => isTalent).length;
  const topOf = (row: number): number => TOP + row * ROW + (row >= talentCount ? GAP : 0);
  const foot = topOf(rows.length);
  const { meal } = plan;
  const words = [
    ...(meal === null ? [] : [{ word: "meal", at: (x(meal.from) + x(meal.until)) / 2 }]),
    ...(marks.wrap === null ? [] : [{ word: "wrap", at: x(marks.wrap) }]),
    ...(marks.now === null ? [] : [{ word: "now", at: x(marks.now) }]),
  ];
  return (
    <>
      <svg
        ref={picture}
        className={styles.picture}
        viewBox={`0 0 ${width} ${foot + FOOT}`}
        role="img"
        aria-label={sayPicture(plan, marks)}
      >
        <defs>
          <pattern id={hatch} width="4" height="4" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
            <line x1="0" y1="0" x2="0" y2="4" className={styles.hatch} />
          </pattern>
        </defs>
        {hoursOf(marks.from, marks.until, width - left).map((hour) => (
          <g key={hour}>
            <line x1={x(hour / 24)} x2={x(hour / 24)} y1={TOP} y2={foot} className={styles.hour} />
            <text
              x={Math.min(x(hour / 24), width - HALF_HOUR_WORD)}
              y={foot + 12}
              textAnchor="middle"
              className={styles.text}
            >
              {sayClock((hour % 24) / 24).slice(0, 2)}
            </text>
          </g>
        ))}
        {meal !== null && (
          <>
            <rect
              x={x(meal.from)}
              y={TOP}
              width={x(meal.until) - x(meal.from)}
              height={foot - TOP}
              className={styles.meal}
            />
          </>
        )}
        {rows.map((row, index) => (
          <Row
            key={`${row.isTalent} ${row.name}`}
            row={row}
            mostLetters={left / LETTER}
            top={topOf(index)}
            x={x}
            hatch={hatch}
          />
        ))}
        <line x1={left} x2={width} y1={foot} y2={foot} className={styles.axis} />
        {marks.wrap !== null && (
          <>
            <line x1={x(marks.wrap)} x2={x(marks.wrap)} y1={TOP} y2={foot} className={styles.wrap} />
          </>
        )}
        {marks.now !== null && (
          <>
            <line x1={x(marks.now)} x2={x(marks.now)} y1={TOP} y2={foot} className={styles.now} />
          </>
        )}
        {spreadLabels(words, width).map(({ word, at, middle }) => (
          <g key={word}>
            <text x={middle} y={WORDS} textAnchor="middle" className={styles.text}>
              {word}
            </text>
            <line x1={middle} x2={at} y1={WORDS + 2} y2={TOP} className={styles.pointer} />
          </g>
        ))}
      </svg>
      <p className={styles.legend}>
        {(["make-up", "change", "shot", "wait"] as const).map((kind) => (
          <span key={kind} className={styles.legendPart}>
            <svg width="22" height="12" viewBox="0 0 22 12" aria-hidden="true">
              <Bar
                bar={{ kind, from: 0, until: 1, look: "", said: "" }}
                top={0}
                x={(time) => 1 + time * 20}
                hatch={hatch}
              />
            </svg>
            {kind === "wait" ? "waits" : kind}
          </span>
        ))}
      </p>
      <DayTable rows={rows} plan={plan} marks={marks} />
    </>
  );
}

function Row({
  row,
  mostLetters,
  top,
  x,
  hatch,
}: {
  readonly row: DayRow;
  readonly mostLetters: number;
  readonly top: number;
  readonly x: (time: number) => number;
  readonly hatch: string;
}) {
  const styles = useDayPictureStyles();
  const { name } = row;
  return (
    <g>
      <text x={0} y={top + 11} className={styles.text}>
        {name.length > mostLetters ? `${name.slice(0, mostLetters - 1)}…` : name}
      </text>
      {row.bars.map((bar) => (
        <Bar key={`${bar.from} ${bar.said}`} bar={bar} top={top} x={x} hatch={hatch} />
      ))}
    </g>
  );
}

function Bar({
  bar,
  top,
  x,
  hatch,
}: {
  readonly bar: DayBar;
  readonly top: number;
  readonly x: (time: number) => number;
  readonly hatch: string;
}) {
  const styles = useDayPictureStyles();
  const { kind, from, until, look } = bar;
  const [left, right] = [x(from), x(until)];
  const middle = top + 1 + BAR / 2;
  if (kind === "wait") return <line x1={left} x2={right} y1={middle} y2={middle} className={styles.wait} />;
  const width = Math.max(1, right - left);
  return (
    <>
      <rect
        x={left}
        y={top + 1}
        width={width}
        height={BAR}
        fill={kind === "change" ? `url(#${hatch})` : undefined}
        className={mergeClasses(styles.bar, kind === "shot" && styles.shot, kind === "make-up" && styles.hollow)}
      />
      {kind === "shot" && width >= NUMBER_WIDTH && look.length <= 3 && (
        <text x={left + width / 2} y={top + 9.5} textAnchor="middle" className={styles.number}>
          {look}
        </text>
      )}
    </>
  );
}

function hoursOf(from: number, until: number, width: number): readonly number[] {
  const hourWidth = width / ((until - from) * 24);
  const step = Math.ceil(LEAST_HOUR_WIDTH / hourWidth);
  const first = Math.ceil(from * 24 - 1e-6);
  const last = Math.floor(until * 24 + 1e-6);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, index) => first + index).filter(
    (hour) => (hour - first) % step === 0,
  );
}

function sayPicture(plan: PlannedDay, { wrap, now }: { readonly wrap: number | null; readonly now: number | null }) {
  const parts = [`The day from ${sayClock(plan.call)} to ${sayClock(plan.ends)}`];
  if (plan.meal !== null) parts.push(`meal at ${sayClock(plan.meal.from)}`);
  if (wrap !== null) {
    const over = (plan.ends - wrap) * 24 * 60;
    parts.push(`wrap at ${sayClock(wrap)}${over > 0 ? `, passed by ${sayMinutes(over)}` : ""}`);
  }
  if (now !== null) parts.push(`now ${sayClock(now)}`);
  return `${parts.join("; ")}. A row a talent, then chairs, dressers and cameras; the times stand in the table below.`;
}
