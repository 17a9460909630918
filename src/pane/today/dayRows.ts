import type { PlannedDay, PlannedLook, PlannedStep } from "../../domain/day/plannedDay";
import { sayLook } from "../../domain/day/sayLook";
import { sayWait } from "../../domain/day/sayWait";
import type { DayBar, DayRow } from "./DayRow";

const STATIONS = [
  { kind: "hair and make-up", name: "Chair" },
  { kind: "change", name: "Dresser" },
  { kind: "shot", name: "Camera" },
] as const;

/**
 * The day as rows: one a talent, with what each look of theirs waits for between its steps, then one for each dresser,
 * chair and camera that has something to do. A look that names no talent stands in a row of its own kind.
 */
export function dayRows({ looks }: PlannedDay): readonly DayRow[] {
  const talents = [...new Set(looks.flatMap(namesOf))];
  const ofTalents = talents.map((name) => ({
    name,
    isTalent: true,
    bars: inTime(looks.filter((planned) => namesOf(planned).includes(name)).flatMap(barsOfLook)),
  }));
  const ofStations = STATIONS.flatMap(({ kind, name }) => {
    const done = looks.flatMap((planned) =>
      planned.steps.filter((step) => step.kind === kind).map((step) => ({ station: step.station, planned, step })),
    );
    const stations = [...new Set(done.map(({ station }) => station))].sort((a, b) => a - b);
    return stations.map((station) => ({
      name: stations.length === 1 ? name : `${name} ${station}`,
      isTalent: false,
      bars: inTime(done.filter((one) => one.station === station).map(({ planned, step }) => barOf(planned, step))),
    }));
  });
  return [...ofTalents, ...ofStations];
}

function namesOf({ look }: PlannedLook): readonly string[] {
  return look.talents.length === 0 ? ["(no talent)"] : look.talents;
}

function barsOfLook(planned: PlannedLook): readonly DayBar[] {
  return planned.steps.flatMap((step, index) => {
    const bar = barOf(planned, step);
    const before = planned.steps[index - 1];
    if (before === undefined || before.until >= step.from) return [bar];
    const look = String(planned.look.label);
    const said = `${sayLook(look)} waits for ${sayWait(step.waitsFor)}`;
    return [{ kind: "wait", from: before.until, until: step.from, look, said }, bar];
  });
}

function barOf({ look }: PlannedLook, step: PlannedStep): DayBar {
  const label = String(look.label);
  const kind = step.kind === "hair and make-up" ? "make-up" : step.kind;
  return { kind, from: step.from, until: step.until, look: label, said: `${step.kind}, ${sayLook(label)}` };
}

function inTime(bars: readonly DayBar[]): readonly DayBar[] {
  return [...bars].sort((a, b) => a.from - b.from);
}
