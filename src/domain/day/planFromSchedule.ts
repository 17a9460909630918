import { CHANGE, HAIR_MAKEUP, SHOT, STEPS_A_LOOK } from "../plan/daySchedule";
import type { DaySchedule } from "../plan/daySchedule";
import type { DayWork } from "../plan/dayWork";
import { clockFraction } from "./clockFraction";
import type { Look } from "./look";
import type { PlannedDay, PlannedLook, PlannedMeal, PlannedStep } from "./plannedDay";
import type { Wait } from "./wait";

const KINDS: readonly PlannedStep["kind"][] = ["hair and make-up", "change", "shot"];

/** A schedule in the words of the day: `looks` as the work numbers them, shown in the order they are shot. */
export function planFromSchedule(
  looks: readonly Look[],
  work: DayWork,
  order: readonly number[],
  schedule: DaySchedule,
): PlannedDay {
  const talentNames: string[] = [];
  looks.forEach((look, index) => {
    work.looks[index]!.talents.forEach((talent, place) => (talentNames[talent] = look.talents[place]!));
  });

  const waitAt = (at: number): Wait => {
    const kind = schedule.waitKind[at]!;
    const other = looks[schedule.waitLook[at]!];
    const own = looks[Math.floor(at / STEPS_A_LOOK)]!.pieces;
    return {
      kind,
      look: other?.label ?? null,
      talent: talentNames[schedule.waitTalent[at]!] ?? null,
      piece: (kind === "piece" && own.find((piece) => other!.pieces.includes(piece))) || null,
    };
  };

  const planned = (index: number): PlannedLook => {
    const look = looks[index]!;
    const first = index * STEPS_A_LOOK;
    const preparation = look.makeupFirst ? [HAIR_MAKEUP, CHANGE] : [CHANGE, HAIR_MAKEUP];
    const done = [...preparation.filter((step) => schedule.station[first + step]! >= 0), SHOT];
    const readySteps = done.length > 1 ? done.slice(0, -1) : preparation;
    const fromSeconds = schedule.fromSeconds[first + readySteps[0]!]!;
    const readySeconds = schedule.untilSeconds[first + readySteps.at(-1)!]!;
    const shotSeconds = schedule.fromSeconds[first + SHOT]!;
    const steps = done.map((step) => ({
      kind: KINDS[step]!,
      from: clockFraction(schedule.fromSeconds[first + step]!),
      until: clockFraction(schedule.untilSeconds[first + step]!),
      station: schedule.station[first + step]! + 1,
      waitsFor: waitAt(first + step),
    }));
    // A step that waits only for the one before it has the reason of that one.
    const reason = [...steps].reverse().find((step) => step.waitsFor.kind !== "preparation");
    return {
      look,
      steps,
      changeFrom: clockFraction(fromSeconds),
      readyBy: clockFraction(readySeconds),
      shootFrom: clockFraction(shotSeconds),
      shootUntil: clockFraction(schedule.untilSeconds[first + SHOT]!),
      minutesSpare: (shotSeconds - readySeconds) / 60,
      waitsFor: reason!.waitsFor,
    };
  };

  return {
    looks: order.map(planned),
    call: clockFraction(work.callSeconds),
    ends: clockFraction(schedule.endSeconds),
    meal: mealOf(work, schedule),
  };
}

function mealOf(work: DayWork, schedule: DaySchedule): PlannedMeal | null {
  if (schedule.meal === null || work.meal === null) return null;
  const { fromSeconds, untilSeconds } = schedule.meal;
  const { dueSeconds } = work.meal;
  return {
    from: clockFraction(fromSeconds),
    until: clockFraction(untilSeconds),
    due: clockFraction(dueSeconds),
    minutesLate: Math.max(0, fromSeconds - dueSeconds) / 60,
  };
}
