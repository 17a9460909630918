import type { DayWork, WorkLook } from "./dayWork";

/** What one camera still needs at least, by the looks that are left and the one it shoots before them. */
export interface ShotTails {
  /** From the end of one shot to the beginning of the next at least, at `before * count + next`. */
  readonly gapSeconds: Float64Array;
  /** From the end of a shot to the end of the last at least, at `left * count + shot`, where `left` has a bit for each look. */
  readonly tailSeconds: Float64Array;
}

/** With more looks there would be too many sets of them. */
const MOST_LOOKS = 15;

/**
 * The shots that are left, one after another with no gap but those that any order has: the camera crosses between sets,
 * and who was in the last shot, or what was worn in it, has to be changed for the next.
 *
 * Dynamic programming over sets of looks (Held and Karp 1962). null where there are several cameras, many looks, or
 * some have been shot.
 */
export function shotTails(work: DayWork): ShotTails | null {
  const { looks } = work;
  const count = looks.length;
  if (work.cameras > 1 || count > MOST_LOOKS || looks.some(({ shotAtSeconds }) => shotAtSeconds !== null)) return null;
  const gapSeconds = new Float64Array(count * count);
  looks.forEach((look, before) =>
    looks.forEach((next, index) => (gapSeconds[before * count + index] = gapBetween(work, look, before, next))),
  );
  const afterOf = looks.map(({ after }) => after.reduce((bits, look) => bits | (1 << look), 0));
  const tailSeconds = new Float64Array(count << count);
  for (let left = 1; left < 1 << count; left++) {
    for (let before = 0; before < count; before++) {
      if ((left & (1 << before)) !== 0) continue;
      let least = Infinity;
      for (let next = 0; next < count; next++) {
        if ((left & (1 << next)) === 0 || (left & afterOf[next]!) !== 0) continue;
        const rest = tailSeconds[(left ^ (1 << next)) * count + next]!;
        const tail = gapSeconds[before * count + next]! + looks[next]!.shootingSeconds + rest;
        if (tail < least) least = tail;
      }
      tailSeconds[left * count + before] = least;
    }
  }
  return { gapSeconds, tailSeconds };
}

function gapBetween(work: DayWork, look: WorkLook, before: number, next: WorkLook): number {
  const crossing = look.set >= 0 && next.set >= 0 && look.set !== next.set ? work.crossingSeconds : 0;
  const isShared = next.talents.some((talent) => look.talents.includes(talent));
  const change = leastChangeFrom(before, next, isShared);
  const again = isShared ? next.hairMakeupSeconds + change : 0;
  if (!next.pieces.some((piece) => look.pieces.includes(piece))) return Math.max(crossing, again);
  const handOver = look.wearers === next.wearers ? 0 : work.handOverSeconds;
  const dressed = change > 0 ? change + (next.makeupFirst ? 0 : next.hairMakeupSeconds) : 0;
  return Math.max(crossing, again, handOver + dressed);
}

/** The shortest change there can be where a look comes right after that one. */
function leastChangeFrom(before: number, { changeSeconds, changeSecondsFrom }: WorkLook, isShared: boolean): number {
  if (changeSecondsFrom === null) return changeSeconds;
  // Of all its talents the longest change counts, and one of them comes from that look.
  if (isShared) return changeSecondsFrom.get(before) ?? changeSeconds;
  return Math.min(changeSeconds, ...changeSecondsFrom.values());
}
