import { CHANGE, HAIR_MAKEUP, SHOT, STEPS_A_LOOK } from "../../../src/domain/plan/daySchedule";
import type { MealSpan } from "../../../src/domain/plan/daySchedule";
import type { DayWork } from "../../../src/domain/plan/dayWork";

const MINUTE = 60;

export interface WatchedDay {
  readonly fromSeconds: readonly number[];
  readonly untilSeconds: readonly number[];
}

/**
 * The same day lived through minute by minute: at every minute, whatever may begin begins.
 *
 * Slow and written the other way about: nothing is computed ahead, a chair or a dresser is free when fewer
 * earlier looks are unfinished there than there are of them, and time only ever goes forward. Whole minutes only;
 * no look may have been shot already.
 */
export function minuteByMinute(work: DayWork, order: readonly number[], meal: MealSpan | null): WatchedDay {
  const from = new Array<number>(work.looks.length * STEPS_A_LOOK).fill(Infinity);
  const until = [...from];
  const cameras = Array.from({ length: work.cameras }, () => ({ free: work.callSeconds, set: -1 }));
  const place = new Map(order.map((look, at) => [look, at]));
  const earlier = (look: number): number[] => order.slice(0, place.get(look));
  const wears = (look: number, talent: number): boolean => work.looks[look]!.talents.includes(talent);

  const lengthOf = (look: number, step: number): number => {
    const it = work.looks[look]!;
    if (step === HAIR_MAKEUP) return it.hairMakeupSeconds;
    if (step === SHOT) return it.shootingSeconds;
    if (it.talents.length === 0) return it.changeSeconds;
    return Math.max(
      ...it.talents.map((talent) => {
        const worn = earlier(look).filter((other) => wears(other, talent));
        const last = worn[worn.length - 1];
        return (last === undefined ? undefined : it.changeSecondsFrom?.get(last)) ?? it.changeSeconds;
      }),
    );
  };
  const stepsOf = (look: number): number[] =>
    work.looks[look]!.makeupFirst ? [HAIR_MAKEUP, CHANGE, SHOT] : [CHANGE, HAIR_MAKEUP, SHOT];
  const ended = (look: number, step: number, now: number): boolean => until[look * STEPS_A_LOOK + step]! <= now;
  const isMeal = (now: number, length: number): boolean =>
    meal !== null && now < meal.untilSeconds && now + length > meal.fromSeconds;
  const reach = (camera: { free: number; set: number }, set: number): number => {
    if (set < 0 || camera.set < 0 || camera.set === set) return camera.free;
    let leave = camera.free;
    while (isMeal(leave, work.crossingSeconds)) leave += MINUTE;
    return leave + work.crossingSeconds;
  };

  /** A piece goes from look to look: each that wore it before is shot, and the last of them has handed it over. */
  const isHandedOver = (piece: number, look: number, now: number): boolean => {
    const worn = earlier(look).filter((other) => work.looks[other]!.pieces.includes(piece));
    const last = worn.at(-1);
    if (last === undefined) return true;
    if (!worn.every((other) => ended(other, SHOT, now))) return false;
    const names = (index: number): string => [...work.looks[index]!.talents].sort().join();
    if (names(look) !== "" && names(look) === names(last)) return true;
    let begun = until[last * STEPS_A_LOOK + SHOT]!;
    while (isMeal(begun, work.handOverSeconds)) begun += MINUTE;
    return begun + work.handOverSeconds <= now;
  };

  const mayBegin = (look: number, step: number, now: number): boolean => {
    const it = work.looks[look]!;
    const steps = stepsOf(look);
    const before = steps.slice(0, steps.indexOf(step));
    if (!before.every((other) => ended(look, other, now))) return false;
    if (now < it.thereSeconds) return false;
    const others = earlier(look);
    if (it.talents.some((talent) => others.some((other) => wears(other, talent) && !ended(other, SHOT, now))))
      return false;
    const length = lengthOf(look, step);
    const needsPieces = step === SHOT || (step === CHANGE && length > 0);
    if (needsPieces && !it.pieces.every((piece) => isHandedOver(piece, look, now))) return false;
    if (step !== SHOT) {
      if (length === 0) return true;
      const capacity = step === HAIR_MAKEUP ? work.chairs : work.dressers;
      const unfinished = others.filter((other) => lengthOf(other, step) > 0 && !ended(other, step, now));
      return unfinished.length < capacity && !isMeal(now, length);
    }
    if (!it.after.every((other) => ended(other, SHOT, now))) return false;
    if (!others.every((other) => from[other * STEPS_A_LOOK + SHOT]! <= now)) return false;
    return cameras.some((camera) => reach(camera, it.set) <= now) && !isMeal(now, length);
  };

  for (let now = work.callSeconds; until.includes(Infinity); now += MINUTE) {
    if (now > work.callSeconds + 7 * 86400) throw new Error("the day never ends");
    let began = true;
    while (began) {
      began = false;
      for (const look of order) {
        for (const step of stepsOf(look)) {
          const at = look * STEPS_A_LOOK + step;
          if (from[at] !== Infinity || !mayBegin(look, step, now)) continue;
          from[at] = now;
          until[at] = now + lengthOf(look, step);
          began = true;
          if (step !== SHOT) continue;
          const set = work.looks[look]!.set;
          const soonest = cameras.reduce((a, b) => (reach(b, set) < reach(a, set) ? b : a));
          soonest.free = until[at]!;
          if (set >= 0) soonest.set = set;
        }
      }
    }
  }
  return { fromSeconds: from, untilSeconds: until };
}
