import type { DayWork, WorkLook } from "../plan/dayWork";
import { clockSeconds } from "./clockSeconds";
import type { Day } from "./day";
import type { Look } from "./look";
import { secondsNearCall } from "./secondsNearCall";

/**
 * A day's looks, in the order given here, as the numbers that the schedule is made of.
 *
 * Minutes are rounded to whole seconds. A camera crosses between places: sets, and inside and outside of one. A talent whose Arrives is blank on one row is there from the earliest
 * time that stands on any of that talent's rows; nobody is waited for before call. On a day under way nothing of
 * a look that is not yet shot begins before `nowSeconds`.
 */
export function workOfDay(day: Day, looks: readonly Look[], nowSeconds = -Infinity): DayWork {
  const callSeconds = clockSeconds(day.call);
  const indexOf = new Map(looks.map((look, index) => [look.key, index]));
  const talents = numbered(looks.flatMap((look) => look.talents));
  const placeOf = placesOf(looks);
  const places = numbered(looks.flatMap((look) => placeOf(look) ?? []));
  const pieces = numbered(sharedPieces(looks));
  const wearers = numbered(looks.map(wearersOf));
  const arrivals = arrivalsOf(looks, callSeconds);

  const workLook = (look: Look): WorkLook => {
    const place = placeOf(look);
    const arrival = lastArrival(look, arrivals, callSeconds);
    const isHeldByNow = look.shotAt === null && nowSeconds > arrival.seconds;
    return {
      talents: look.talents.map((talent) => talents.get(talent)!),
      thereSeconds: isHeldByNow ? nowSeconds : arrival.seconds,
      lastToArrive: isHeldByNow || arrival.talent === null ? -1 : talents.get(arrival.talent)!,
      hairMakeupSeconds: secondsOf(look.hairMakeupMinutes),
      changeSeconds: secondsOf(look.changeMinutes),
      changeSecondsFrom: changesInto(look, day, indexOf),
      shootingSeconds: secondsOf(look.shootingMinutes),
      makeupFirst: look.makeupFirst,
      set: place === null ? -1 : places.get(place)!,
      pieces: look.pieces.flatMap((piece) => pieces.get(piece) ?? []),
      wearers: wearers.get(wearersOf(look))!,
      after: look.after.map((key) => indexOf.get(key)!),
      shotAtSeconds: look.shotAt === null ? null : secondsNearCall(look.shotAt, callSeconds),
    };
  };
  // More of a thing than there are looks changes nothing, and a mistyped million must not fill the memory.
  const atMost = (howMany: number): number => Math.max(1, Math.min(howMany, looks.length));
  const { crew } = day;
  const meal = crew.meal === null || crew.meal.minutes === 0 ? null : crew.meal;
  return {
    callSeconds,
    looks: looks.map(workLook),
    talentCount: talents.size,
    chairs: atMost(crew.chairs),
    dressers: atMost(crew.dressers),
    cameras: atMost(crew.cameras),
    crossingSeconds: secondsOf(crew.crossingMinutes),
    pieceCount: pieces.size,
    handOverSeconds: secondsOf(crew.handOverMinutes),
    meal: meal && { dueSeconds: callSeconds + secondsOf(meal.afterHours * 60), lengthSeconds: secondsOf(meal.minutes) },
  };
}

function secondsOf(minutes: number): number {
  return Math.round(minutes * 60);
}

function numbered(names: readonly string[]): Map<string, number> {
  return new Map([...new Set(names)].map((name, index) => [name, index]));
}

/** Where a look is shot: on its set, which is two places where it is both indoors and outdoors; where no set is said, indoors or outdoors. */
function placesOf(looks: readonly Look[]): (look: Look) => string | null {
  const wheres = new Map<string | null, Set<string>>();
  for (const { set, where } of looks) if (where !== null) wheres.set(set, (wheres.get(set) ?? new Set()).add(where));
  return ({ set, where }) => {
    const [only, other] = wheres.get(set) ?? [];
    if (set === null) return where;
    return `${set}|${where ?? (other === undefined ? only : null) ?? ""}`;
  };
}

/** The pieces that more than one look lists. */
function sharedPieces(looks: readonly Look[]): readonly string[] {
  const once = new Set<string>();
  const twice = new Set<string>();
  for (const { pieces } of looks) for (const piece of pieces) (once.has(piece) ? twice : once).add(piece);
  return [...twice];
}

function wearersOf({ talents, key }: Look): string {
  return talents.length === 0 ? `look ${key}` : [...talents].sort().join("\n");
}

function arrivalsOf(looks: readonly Look[], callSeconds: number): Map<string, number> {
  const arrivals = new Map<string, number>();
  for (const look of looks) {
    if (look.arrivesAt === null) continue;
    const seconds = secondsNearCall(look.arrivesAt, callSeconds);
    for (const talent of look.talents) arrivals.set(talent, Math.min(arrivals.get(talent) ?? Infinity, seconds));
  }
  return arrivals;
}

function lastArrival(
  look: Look,
  arrivals: ReadonlyMap<string, number>,
  callSeconds: number,
): { seconds: number; talent: string | null } {
  if (look.arrivesAt !== null) {
    const seconds = Math.max(callSeconds, secondsNearCall(look.arrivesAt, callSeconds));
    return { seconds, talent: look.talents[0] ?? null };
  }
  let last: { seconds: number; talent: string | null } = { seconds: callSeconds, talent: null };
  for (const talent of look.talents) {
    const seconds = arrivals.get(talent) ?? callSeconds;
    if (seconds > last.seconds) last = { seconds, talent };
  }
  return last;
}

function changesInto(look: Look, day: Day, indexOf: ReadonlyMap<string, number>): ReadonlyMap<number, number> | null {
  const into = new Map<number, number>();
  for (const [fromKey, index] of indexOf) {
    const minutes = day.changes.get(fromKey)?.get(look.key);
    if (minutes !== undefined) into.set(index, secondsOf(minutes));
  }
  return into.size === 0 ? null : into;
}
