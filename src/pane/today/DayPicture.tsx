import type { PlannedDay, PlannedStep } from "../../domain/day/plannedDay";
import { sayTime } from "../sayTime";
import { useTodayStyles } from "./useTodayStyles";

const WIDTH = 300;
const LEFT = 34;
const ROW = 13;
const FOOT = 16;

/** The day as one row a look: preparation hollow, the shot solid, the meal a band. The same times stand in the list. */
export function DayPicture({ plan }: { readonly plan: PlannedDay }) {
  const styles = useTodayStyles();
  const from = plan.call;
  const until = Math.max(plan.ends, from + 1 / 24);
  const x = (time: number): number => LEFT + ((time - from) / (until - from)) * (WIDTH - LEFT);
  const height = plan.looks.length * ROW + FOOT;
  const said =
    `The day from ${sayTime(from)} to ${sayTime(plan.ends)}: ${plan.looks.length} looks, one row each, ` +
    "preparation hollow and the shot solid. The same times stand in the list of looks.";
  return (
    <svg className={styles.picture} viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={said}>
      {plan.meal !== null && (
        <rect
          x={x(plan.meal.from)}
          y={0}
          width={x(plan.meal.until) - x(plan.meal.from)}
          height={height - FOOT}
          className={styles.mealBand}
        />
      )}
      {plan.looks.map(({ look, steps }, row) => (
        <g key={look.key}>
          <text x={0} y={row * ROW + 10} className={styles.pictureText}>
            {String(look.label).slice(0, 5)}
          </text>
          {steps.map((step) => (
            <rect
              key={step.kind}
              x={x(step.from)}
              y={row * ROW + 2.5}
              width={Math.max(0.5, x(step.until) - x(step.from))}
              height={ROW - 5}
              className={styles[barOf(step)]}
            />
          ))}
        </g>
      ))}
      <line x1={LEFT} x2={WIDTH} y1={height - FOOT} y2={height - FOOT} className={styles.axis} />
      <text x={LEFT} y={height - 4} className={styles.pictureText}>
        {sayTime(from)}
      </text>
      {plan.meal !== null && (
        <text
          x={(x(plan.meal.from) + x(plan.meal.until)) / 2}
          y={height - 4}
          textAnchor="middle"
          className={styles.pictureText}
        >
          meal
        </text>
      )}
      <text x={WIDTH} y={height - 4} textAnchor="end" className={styles.pictureText}>
        {sayTime(plan.ends)}
      </text>
    </svg>
  );
}

function barOf(step: PlannedStep): "barShot" | "barPreparation" {
  return step.kind === "shot" ? "barShot" : "barPreparation";
}
