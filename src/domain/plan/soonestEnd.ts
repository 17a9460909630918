import type { DayLoads, PairedLook } from "./dayLoads";
import type { DayState } from "./dayState";
import type { DayWork, WorkLook } from "./dayWork";
import type { ShotTails } from "./shotTails";
import { leastChangeNow } from "./leastChangeNow";

/**
 * No order of the looks that are left ends sooner than this: the largest of several loads, each of which must fit.
 *
 * The load of each talent; of the cameras, from when looks can be ready; of the chairs and the dressers, with the shots
 * that follow. A meal that is still to come is not counted. Looks that are left have not been shot. `notBefore` is
 * when work goes on after a meal that is placed already.
 */
export function soonestEnd(
  work: DayWork,
  loads: DayLoads,
  state: DayState,
  left: readonly number[],
  notBefore: number,
): number {
  const chairFree = Math.max(notBefore, least(state.chairs.freeAtSeconds));
  const dresserFree = Math.max(notBefore, least(state.dressers.freeAtSeconds));
  const { talentUntil, isLeft, ready, shooting } = loads.notes;
  for (let talent = 0; talent < talentUntil.length; talent++)
    talentUntil[talent] = Math.max(state.talentFreeSeconds[talent]!, notBefore, loads.talentThereSeconds[talent]!);
  isLeft.fill(0);
  let end = state.endSeconds;
  let changes = 0;
  let shortestAfterChange = Infinity;
  let makeup = 0;
  let shortestAfterMakeup = Infinity;
  for (let at = 0; at < left.length; at++) {
    isLeft[left[at]!] = 1;
    const look = work.looks[left[at]!]!;
    const change = leastChangeNow(work, state, left[at]!, left);
    const { hairMakeupSeconds, makeupFirst, shootingSeconds, talents } = look;
    for (const talent of talents) {
      // Each talent's own steps follow one another.
      const until = talentUntil[talent]! + hairMakeupSeconds + change + shootingSeconds;
      talentUntil[talent] = until;
      if (until > end) end = until;
    }
    ready[at] = readyAt(look, change, state, notBefore, chairFree, dresserFree);
    shooting[at] = shootingSeconds;
    if (change > 0) {
      changes += change;
      shortestAfterChange = Math.min(shortestAfterChange, shootingSeconds + (makeupFirst ? 0 : hairMakeupSeconds));
    }
    if (hairMakeupSeconds > 0) {
      makeup += hairMakeupSeconds;
      shortestAfterMakeup = Math.min(shortestAfterMakeup, shootingSeconds + (makeupFirst ? change : 0));
    }
  }
  if (changes > 0) end = Math.max(end, shared(state.dressers.freeAtSeconds, notBefore, changes) + shortestAfterChange);
  if (makeup > 0) end = Math.max(end, shared(state.chairs.freeAtSeconds, notBefore, makeup) + shortestAfterMakeup);
  end = Math.max(end, pairedEnd(work, loads.chairFirst, isLeft, chairFree));
  if (loads.shotTails !== null) end = Math.max(end, shotsEnd(work, loads.shotTails, state, left, ready));
  end = Math.max(end, pairedEnd(work, loads.dresserFirst, isLeft, dresserFree));
  return Math.max(end, camerasEnd(work, loads, state, left));
}

/** When a look that is left can be ready at the soonest, whatever comes before it: what it needs is only ever free later than now. */
function readyAt(
  look: WorkLook,
  change: number,
  state: DayState,
  notBefore: number,
  chairFree: number,
  dresserFree: number,
): number {
  let ready = Math.max(notBefore, look.thereSeconds);
  for (const talent of look.talents) ready = Math.max(ready, state.talentFreeSeconds[talent]!);
  const hair = look.hairMakeupSeconds;
  if (look.makeupFirst && hair > 0) ready = Math.max(ready, chairFree) + hair;
  if (change > 0) ready = Math.max(ready, dresserFree) + change;
  if (!look.makeupFirst && hair > 0) ready = Math.max(ready, chairFree) + hair;
  return ready;
}

/** One chair or dresser and then the camera: in the best order for these two alone, each look in turn, then all shots from it on. */
function pairedEnd(work: DayWork, pairs: readonly PairedLook[], isLeft: Uint8Array, freeSeconds: number): number {
  let later = 0;
  if (work.cameras === 1) {
    for (const pair of pairs) if (isLeft[pair.look] === 1) later += pair.secondSeconds;
  }
  let first = freeSeconds;
  let end = 0;
  for (const pair of pairs) {
    if (isLeft[pair.look] === 0) continue;
    first += pair.firstSeconds;
    end = Math.max(end, first + pair.betweenSeconds + (work.cameras === 1 ? later : pair.secondSeconds));
    later -= pair.secondSeconds;
  }
  return end;
}

/** The shots in the best order for the one camera, from when the first of them can begin; `ready` by place among those left. */
function shotsEnd(
  work: DayWork,
  { gapSeconds, tailSeconds }: ShotTails,
  state: DayState,
  left: readonly number[],
  ready: readonly number[],
): number {
  const count = work.looks.length;
  const before = state.previousShot;
  const free = state.cameras.freeAtSeconds[0]!;
  let bits = 0;
  for (let at = 0; at < left.length; at++) bits |= 1 << left[at]!;
  let least = Infinity;
  for (let at = 0; at < left.length; at++) {
    const next = left[at]!;
    const there = before < 0 ? free : free + gapSeconds[before * count + next]!;
    const tail = tailSeconds[(bits ^ (1 << next)) * count + next]!;
    const end = Math.max(there, ready[at]!) + work.looks[next]!.shootingSeconds + tail;
    if (end < least) least = end;
  }
  return least;
}

/** The shots, from when the first can begin; of one camera also those shots alone that cannot begin before any given look is ready. */
function camerasEnd(work: DayWork, { notes }: DayLoads, state: DayState, left: readonly number[]): number {
  const { ready, shooting } = notes;
  const free = state.cameras.freeAtSeconds;
  const count = left.length;
  sortTogether(ready, shooting, count);
  if (work.cameras > 1) return shared(free, ready[count - 1]!, sum(shooting, count));
  let end = 0;
  let since = 0;
  for (let at = 0; at < count; at++) {
    since += shooting[at]!;
    end = Math.max(end, ready[at]! + since);
  }
  const crossings = crossingsLeft(work, notes.isSetLeft, state, left);
  if (crossings === 0) return Math.max(end, free[0]! + since);
  // A camera may cross before the first look is ready, but only once.
  const crossing = work.crossingSeconds;
  return Math.max(free[0]! + since + crossings * crossing, ready[count - 1]! + since + (crossings - 1) * crossing, end);
}

/** The sets that one camera has yet to come to from another set. */
function crossingsLeft(work: DayWork, isSetLeft: Uint8Array, state: DayState, left: readonly number[]): number {
  if (work.crossingSeconds === 0) return 0;
  isSetLeft.fill(0);
  let count = 0;
  for (let at = 0; at < left.length; at++) {
    const { set } = work.looks[left[at]!]!;
    if (set < 0 || isSetLeft[set] === 1) continue;
    isSetLeft[set] = 1;
    count++;
  }
  const here = state.cameras.lastSet[0]!;
  return Math.max(0, count - (here < 0 || isSetLeft[here] === 1 ? 1 : 0));
}

function sum(numbers: readonly number[], count: number): number {
  let total = 0;
  for (let at = 0; at < count; at++) total += numbers[at]!;
  return total;
}

/** When that much work can be done at the soonest by all of them together, if it could be cut into any pieces. */
function shared(freeAtSeconds: readonly number[], notBefore: number, totalSeconds: number): number {
  // Who is free only after all is done by those who are free sooner has no part in it.
  for (let done = Infinity; ;) {
    let until = totalSeconds;
    let count = 0;
    for (let unit = 0; unit < freeAtSeconds.length; unit++) {
      const free = Math.max(freeAtSeconds[unit]!, notBefore);
      if (free > done) continue;
      until += free;
      count++;
    }
    if (until / count >= done) return done;
    done = until / count;
  }
}

function least(numbers: readonly number[]): number {
  let smallest = Infinity;
  for (let at = 0; at < numbers.length; at++) if (numbers[at]! < smallest) smallest = numbers[at]!;
  return smallest;
}

/** The first so many, latest first, by insertion: the lists are short. */
function sortTogether(keys: number[], values: number[], count: number): void {
  for (let end = 1; end < count; end++) {
    const key = keys[end]!;
    const value = values[end]!;
    let at = end;
    for (; at > 0 && keys[at - 1]! < key; at--) {
      keys[at] = keys[at - 1]!;
      values[at] = values[at - 1]!;
    }
    keys[at] = key;
    values[at] = value;
  }
}
