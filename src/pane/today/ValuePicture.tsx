import { mergeClasses } from "@fluentui/react-components";
import { isoFromSerial } from "../../domain/dates/isoFromSerial";
import { sayDay } from "../sayDay";
import { sayMoney } from "../sayMoney";
import { barsOf } from "./barsOf";
import { useTodayStyles } from "./useTodayStyles";
import type { CurrencyValue } from "./CurrencyValue";

const WIDTH = 300;
const HEIGHT = 96;
const TOP = 16;
const FOOT = 16;

interface ValuePictureProps {
  readonly value: CurrencyValue;
  readonly asOf: number;
  readonly limit: number | undefined;
}

/** Value by day as bars with the limit as a dashed line; the same figures stand in a table below it. */
export function ValuePicture({ value, asOf, limit }: ValuePictureProps) {
  const styles = useTodayStyles();
  const { days, currency } = value;
  const picture = barsOf(days, limit, { widthPx: WIDTH, heightPx: HEIGHT - TOP - FOOT });
  const peak = days.reduce((most, day) => (day.valueOut > most.valueOut ? day : most), { day: asOf, valueOut: 0 });
  const first = days[0]?.day ?? asOf;
  const last = days.at(-1)?.day ?? asOf;
  const foot = HEIGHT - FOOT;
  const todayBar = picture.bars.find(({ day }) => day === asOf);
  const said =
    `Value held by day from ${isoFromSerial(first)} to ${isoFromSerial(last)}; ` +
    `most on ${isoFromSerial(peak.day)}: ${sayMoney(peak.valueOut, currency)}. The figures stand in the table below.`;
  return (
    <>
      <svg className={styles.picture} viewBox={`0 0 ${WIDTH} ${HEIGHT}`} role="img" aria-label={said}>
        {picture.bars.map(({ day, leftPx, widthPx, heightPx }) => (
          <rect
            key={day}
            x={leftPx}
            y={foot - heightPx}
            width={widthPx}
            height={heightPx}
            className={day === asOf ? styles.barToday : styles.bar}
          />
        ))}
        <line x1={0} x2={WIDTH} y1={foot} y2={foot} className={styles.axis} />
        {picture.limitPx !== null && (
          <line
            x1={0}
            x2={WIDTH}
            y1={foot - picture.limitPx}
            y2={foot - picture.limitPx}
            strokeDasharray="4 3"
            strokeWidth={1.5}
            className={styles.limitLine}
          />
        )}
        <text x={0} y={11} className={styles.pictureText}>
          {`most ${sayMoney(peak.valueOut, currency)}, ${isoFromSerial(peak.day).slice(5)}`}
        </text>
        {picture.limitPx !== null && (
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
          <thead>
            <tr>
              <th scope="col" className={mergeClasses(styles.figuresCell, styles.figuresHead)}>
                Day
              </th>
              <th scope="col" className={mergeClasses(styles.figuresCell, styles.figuresHead, styles.amount)}>
                Value held
              </th>
            </tr>
          </thead>
          <tbody>
            {days.map(({ day, valueOut }) => (
              <tr key={day}>
                <th scope="row" className={styles.figuresCell}>
                  {sayDay(day)}
                  {day === asOf && " (as of)"}
                </th>
                <td className={mergeClasses(styles.figuresCell, styles.amount)}>
                  {sayMoney(valueOut, currency)}
                  {limit !== undefined && valueOut > limit && " (over)"}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </details>
    </>
  );
}
