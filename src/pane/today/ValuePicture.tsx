import { mergeClasses } from "@fluentui/react-components";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { TableHead } from "../frame/TableHead";
import { sayCount } from "../sayCount";
import { sayDay } from "../sayDay";
import { sayMoney } from "../sayMoney";
import { againstCover } from "./againstCover";
import { barsOf } from "./barsOf";
import type { Cover } from "./Cover";
import { coverOn } from "./coverOn";
import { useTodayStyles } from "./useTodayStyles";
import type { CurrencyValue } from "./CurrencyValue";

const WIDTH = 300;
const HEIGHT = 96;
const TOP = 16;
const FOOT = 16;

interface ValuePictureProps {
  readonly value: CurrencyValue;
  readonly asOf: number;
  readonly cover: Cover;
}

/** Value by day as bars with each day's cover as a dashed line; the same figures stand in a table below it. */
export function ValuePicture({ value, asOf, cover }: ValuePictureProps) {
  const styles = useTodayStyles();
  const { currency } = value;
  const days = value.days.map((each) => ({ ...each, limit: coverOn(cover, each.day)?.amount ?? null }));
  const isCovered = days.some(({ limit }) => limit !== null);
  const daysOver = days.filter(({ valueOut, limit }) => isOver(valueOut, limit)).length;
  const bars = barsOf(days, { widthPx: WIDTH, heightPx: HEIGHT - TOP - FOOT });
  const peak = days.reduce((most, day) => (day.valueOut > most.valueOut ? day : most), { day: asOf, valueOut: 0 });
  const first = days[0]?.day ?? asOf;
  const last = days.at(-1)?.day ?? asOf;
  const of = currency === "" ? "" : `, ${currency}`;
  const foot = HEIGHT - FOOT;
  const todayBar = bars.find(({ day }) => day === asOf);
  const said =
    `Value held by day from ${isoFromSerial(first)} to ${isoFromSerial(last)}; ` +
    `most on ${isoFromSerial(peak.day)}: ${sayMoney(peak.valueOut, currency)}. ${isCovered ? `Above the cover on ${sayCount(daysOver, "day", "days")}. ` : ""}The figures stand in the table below.`;
  return (
    <>
      <svg className={styles.picture} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={said}>
        {bars.map(({ day, leftPx, widthPx, heightPx }, index) => (
          <rect
            key={day}
            x={leftPx}
            y={foot - heightPx}
            width={widthPx}
            height={heightPx}
            className={mergeClasses(
              day === asOf ? styles.barToday : styles.bar,
              isOver(days[index]?.valueOut ?? 0, days[index]?.limit ?? null) && styles.barOver,
            )}
          />
        ))}
        <line x1={0} x2={WIDTH} y1={foot} y2={foot} className={styles.axis} />
        {isCovered && (
          <path
            d={limitPath(bars, foot)}
            fill="none"
            strokeDasharray="4 3"
            strokeWidth={1.5}
            className={styles.limitLine}
          />
        )}
        <text x={0} y={11} className={styles.pictureText}>
          {`most ${sayMoney(peak.valueOut, currency)}, ${isoFromSerial(peak.day).slice(5)}`}
        </text>
        {isCovered && (
          <text x={WIDTH} y={11} textAnchor="end" className={styles.pictureText}>
            {"- - cover"}
          </text>
        )}
        <text x={0} y={HEIGHT - 4} className={styles.pictureText}>
          {isoFromSerial(first).slice(5)}
        </text>
        {last !== first && (
          <text x={WIDTH} y={HEIGHT - 4} textAnchor="end" className={styles.pictureText}>
            {isoFromSerial(last).slice(5)}
          </text>
        )}
        {todayBar !== undefined && todayBar.leftPx > 45 && todayBar.leftPx < WIDTH - 75 && (
          <text
            x={todayBar.leftPx + todayBar.widthPx / 2}
            y={HEIGHT - 4}
            textAnchor="middle"
            className={styles.pictureText}
          >
            {"as of"}
          </text>
        )}
      </svg>
      <details>
        <summary className={styles.summary}>Value by day as a table</summary>
        <table className={styles.figures}>
          <TableHead
            headings={["Day", `Value held${of}`, ...(isCovered ? [`Cover${of}`] : [])]}
            className={mergeClasses(styles.figuresCell, styles.figuresHead)}
            alsoAt={{ 1: styles.amount, 2: styles.amount }}
          />
          <tbody>
            {days.map(({ day, valueOut, limit }) => (
              <tr key={day}>
                <th scope="row" className={styles.figuresCell}>
                  {sayDay(day)}
                  {day === asOf && " (as of)"}
                </th>
                <td className={mergeClasses(styles.figuresCell, styles.amount)}>
                  {sayMoney(valueOut, "")}
                  {isOver(valueOut, limit) && " (over)"}
                </td>
                {isCovered && (
                  <td className={mergeClasses(styles.figuresCell, styles.amount)}>
                    {limit === null ? "none stated" : sayMoney(limit, "")}
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  );
}

const isOver = (valueOut: number, limit: number | null): boolean => againstCover(valueOut, limit).is === "over";

/** Steps from day to day; broken where a day has no limit. */
function limitPath(bars: ReturnType<typeof barsOf>, foot: number): string {
  const step = WIDTH / Math.max(1, bars.length);
  return bars
    .map(({ leftPx, limitPx }, index) => {
      if (limitPx === null) return "";
      const isJoined = (bars[index - 1]?.limitPx ?? null) !== null;
      return `${isJoined ? `V ${foot - limitPx}` : `M ${leftPx} ${foot - limitPx}`} H ${leftPx + step}`;
    })
    .join(" ");
}
