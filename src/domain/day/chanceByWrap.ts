import { fail } from "../fail";
import { isProblem } from "../isProblem";
import type { Outcome } from "../outcome";
import { dayEnd } from "../plan/dayEnd";
import type { WorkLook } from "../plan/dayWork";
import { seededRandom } from "../seededRandom";
import { succeed } from "../succeed";
import { clockSeconds } from "./clockSeconds";
import type { Day } from "./day";
import { dayProblem } from "./dayProblem";
import type { Look } from "./look";
import { looksInOrder } from "./looksInOrder";
import { pertQuantile } from "./pertQuantile";
import { workOfDay } from "./workOfDay";
import { wrapSeconds } from "./wrapSeconds";

/**
 * The share of `runs` days, from 0 to 1, whose last shot ends by wrap, each day with changes drawn from their ranges.
 *
 * Changes are drawn apart from each other, and those without a range stay as they are. Every run draws one number for
 * each look in the order of the sheet, so that another look's figures leave a look's draws alone. Problems as for
 * dayPlan; a range that cannot be read or does not rise; without looks nothing-to-compute.
 */
export function chanceByWrap(day: Day, wrap: number, runs: number, seed: number): Outcome<number> {
  if (day.looks.length === 0) return fail("nothing-to-compute", { what: "the chance", fill: "the rows of looks" });
  const looks = looksInOrder(day.looks, clockSeconds(day.call));
  const ranges = new Map<Look, (chance: number) => number>();
  for (const look of day.looks) {
    if (isProblem(look.changeRange)) return { ok: false, problem: look.changeRange };
    if (look.changeRange !== null) ranges.set(look, pertQuantile(look.changeRange));
  }
  const slowest = { ...day, looks: looks.map(atSlowest) };
  const problem = dayProblem(slowest, looks);
  if (problem !== null) return { ok: false, problem };

  const work = workOfDay(day, looks);
  const drawnLooks: ChangedLook[] = work.looks.map((look) => ({ ...look }));
  const draws = day.looks.map((look) => ({ look: drawnLooks[looks.indexOf(look)]!, minutesAt: ranges.get(look) }));
  const drawnDay = { ...work, looks: drawnLooks };
  const order = looks.map((_, index) => index);
  const untilSeconds = wrapSeconds(wrap, day.call);
  if (!Number.isFinite(dayEnd(workOfDay(slowest, slowest.looks), order)))
    return fail("result-not-finite", { what: "The day" });
  const random = seededRandom(seed);
  const runsNeeded = ranges.size === 0 ? 1 : runs;
  let inTime = 0;
  for (let run = 0; run < runsNeeded; run++) {
    for (const { look, minutesAt } of draws) {
      const chance = random();
      if (minutesAt !== undefined) look.changeSeconds = Math.round(minutesAt(chance) * 60);
    }
    if (dayEnd(drawnDay, order) <= untilSeconds) inTime++;
  }
  return succeed(inTime / runsNeeded);
}

type ChangedLook = { -readonly [Key in keyof WorkLook]: WorkLook[Key] };

function atSlowest(look: Look): Look {
  const range = look.changeRange;
  return range === null || isProblem(range) ? look : { ...look, changeMinutes: range.high };
}
