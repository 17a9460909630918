import type { DayWork } from "./dayWork";

/** Whether, whichever look is first, its first step ends by then; a look whose steps all have no length has none. */
export function beginsInTime(work: DayWork, bySeconds: number): boolean {
  return work.looks.every(({ thereSeconds, makeupFirst, hairMakeupSeconds, changeSeconds, shootingSeconds }) => {
    const preparation = makeupFirst ? hairMakeupSeconds || changeSeconds : changeSeconds || hairMakeupSeconds;
    const first = preparation || shootingSeconds;
    return first > 0 && Math.max(work.callSeconds, thereSeconds) + first <= bySeconds;
  });
}
