import type { Day } from "../../../src/domain/day/day";
import type { Look } from "../../../src/domain/day/look";
import { smallestCrew } from "../../../src/domain/day/smallestCrew";

/** A look with nothing but a number, and whatever a test says of it. */
export function sampleLook(label: string | number, said: Partial<Look> = {}): Look {
  const talents = said.talents ?? [];
  return {
    key: String(label),
    label,
    talents,
    talentText: talents.join(" & "),
    order: null,
    date: null,
    set: null,
    where: null,
    pieces: [],
    changeMinutes: 0,
    changeRange: null,
    hairMakeupMinutes: 0,
    shootingMinutes: 0,
    makeupFirst: true,
    arrivesAt: null,
    shotAt: null,
    after: [],
    fixed: null,
    ...said,
  };
}

/** A day with call at 09:00 and the smallest crew, and whatever a test says of it. */
export function sampleDay(looks: readonly Look[], said: Partial<Day> = {}): Day {
  return { looks, call: 9 / 24, crew: smallestCrew, changes: new Map(), ...said };
}
