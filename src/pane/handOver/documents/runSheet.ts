import { isoFromSerial } from "../../../domain/dates/isoFromSerial";
import { dayPlanTable } from "../../../domain/day/dayPlanTable";
import { sayCount } from "../../sayCount";
import { sayDay } from "../../sayDay";
import { sayMinutes } from "../../sayMinutes";
import { sayClock } from "../../../domain/sayClock";
import type { DayLooks } from "../../today/DayLooks";
import type { DocumentCell } from "../paper/DocumentTable";
import type { PaperBlock } from "../paper/Paper";
import type { HandOverDocument } from "./HandOverDocument";
import type { HandOverSource } from "./HandOverSource";
import { lookCards } from "./lookCards";
import { lookGaps } from "./lookGaps";

/** The working day above which a caution stands: two hours over eight. Common practice, no source; local rules come first. */
const LONG_DAY_HOURS = 10;
const HOURS_A_DAY = 24;
const ORDER = "Looks in shooting order";

/** The run sheet of a day: the table that DAYPLAN gives, with the set and the pieces, and how the day ends. */
export function runSheet(source: HandOverSource): HandOverDocument {
  const { looks } = source;
  const { cards } = lookCards(source, false);
  const day = looks?.day ?? null;
  const table = {
    headings: ["Look", "Talent"],
    rows: cards.map(({ name, talent }) => [name, talent]) as DocumentCell[][],
  };
  const plan = looks?.plan ?? null;
  const cells = plan === null ? null : dayPlanTable(plan);
  const whole =
    cells === null
      ? { headings: [...table.headings, "Set"], rows: table.rows.map((row, at) => [...row, cards[at]?.place ?? ""]) }
      : {
          headings: [...cells.headings, "Set"],
          rows: cells.rows.map((row, at) => [
            ...row.map((cell, column) =>
              cells.formats[column] === "time" && typeof cell === "number" ? sayClock(cell) : (cell as DocumentCell),
            ),
            cards[at]?.place ?? "",
          ]),
        };
  const title = `Run sheet${day === null ? "" : `, ${sayDay(day)}`}`;
  const blocks: PaperBlock[] = [
    { kind: "facts", facts: [["Job", source.job.job], ["Stylist", source.job.stylist], ...dayFacts(looks)] },
    ...cautions(looks),
    { kind: "table", caption: plan === null ? ORDER : `${ORDER}; spare in minutes`, table: whole },
    ...pieceBlocks(cards),
  ];
  return {
    paper: {
      title: `Run sheet${day === null ? "" : ` ${isoFromSerial(day)}`}`,
      pages: cards.length === 0 ? [] : [{ title, blocks }],
    },
    table: cards.length === 0 ? null : whole,
    ownFile: null,
    missing: lookGaps(looks, cards, true, null),
  };
}

function pieceBlocks(cards: ReturnType<typeof lookCards>["cards"]): readonly PaperBlock[] {
  const dressed = cards.filter(({ pieces }) => pieces.length > 0);
  if (dressed.length === 0) return [];
  return [
    { kind: "heading", text: "Pieces by look" },
    { kind: "facts", facts: dressed.map(({ name, pieces }) => [name, pieces.join("; ")]) },
  ];
}

function dayFacts(looks: DayLooks | null): readonly (readonly [string, string])[] {
  if (looks === null || looks.call === null) return [];
  const { call, wrap, plan, minutesSpareAtWrap: spare, crew } = looks;
  const { dressers, chairs, cameras } = crew.crew;
  return [
    ["Call", sayClock(call)],
    ["Wrap", wrap === null ? "" : sayClock(wrap.value)],
    ["Meal", plan === null || plan.meal === null ? "" : `${sayClock(plan.meal.from)} to ${sayClock(plan.meal.until)}`],
    ["Last shot ends", plan === null ? "" : sayClock(plan.ends)],
    ["Spare at wrap", spare === null ? "" : spare < 0 ? `${sayMinutes(-spare)} over` : sayMinutes(spare)],
    [
      "People",
      `${sayCount(dressers, "dresser", "dressers")}, ${sayCount(chairs, "chair", "chairs")}, ${sayCount(cameras, "camera", "cameras")}`,
    ],
  ];
}

function cautions(looks: DayLooks | null): readonly PaperBlock[] {
  if (looks === null || looks.plan === null) return [];
  const { plan, minutesSpareAtWrap: spare, wrap } = looks;
  const texts: string[] = [];
  if (plan.meal !== null && plan.meal.minutesLate > 0)
    texts.push(`The meal begins ${sayMinutes(plan.meal.minutesLate)} late.`);
  if (spare !== null && spare < 0) texts.push(`The last shot ends ${sayMinutes(-spare)} after wrap.`);
  const hours = (Math.max(plan.ends, wrap?.value ?? 0) - plan.call) * HOURS_A_DAY;
  if (hours > LONG_DAY_HOURS)
    texts.push(`From call to the end are ${sayMinutes(hours * 60)}. Long days injure: plan rest, and who drives home.`);
  texts.push("Times are a plan. Local rules on hours, meals and rest and the crew's agreement come first.");
  return [{ kind: "caution", text: texts.join(" ") }];
}
