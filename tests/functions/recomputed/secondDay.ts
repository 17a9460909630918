/** A look as the second working of a day takes it; minutes from midnight. */
export interface SecondLook {
  readonly look: number;
  readonly talents: readonly string[];
  readonly change: number;
  readonly hair: number;
  readonly shooting: number;
  readonly isMakeupFirst: boolean;
}

/** Who serves the looks, and the meal that is due so many minutes after call. */
export interface SecondCrew {
  readonly dressers: number;
  readonly chairs: number;
  readonly mealAfter: number | null;
  readonly mealMinutes: number;
}

/** When one look is prepared and shot, in minutes from midnight. */
export interface SecondTiming {
  readonly from: number;
  readonly ready: number;
  readonly start: number;
  readonly end: number;
}

/**
 * A day worked out look by look: each step takes whoever of its helpers is free first, everyone stops for the one meal, which begins
 * at the last end of a step that is not after its time is due, or else at the first end of all. One camera, no sets.
 */
export function secondDay(looks: readonly SecondLook[], call: number, crew: SecondCrew): readonly SecondTiming[] {
  const plain = timings(looks, call, crew, null);
  if (crew.mealAfter === null) return plain.looks;
  const due = call + crew.mealAfter;
  const inTime = plain.ends.filter((end) => end <= due);
  const meal = inTime.length > 0 ? Math.max(...inTime) : Math.min(...plain.ends);
  return timings(looks, call, crew, meal).looks;
}

function timings(
  looks: readonly SecondLook[],
  call: number,
  crew: SecondCrew,
  meal: number | null,
): { readonly looks: readonly SecondTiming[]; readonly ends: readonly number[] } {
  const dressers = new Array<number>(crew.dressers).fill(call);
  const chairs = new Array<number>(crew.chairs).fill(call);
  const talentFree = new Map<string, number>();
  let cameraFree = call;
  const ends: number[] = [];
  const begun = (earliest: number, minutes: number): number => {
    if (meal === null || minutes === 0 || earliest + minutes <= meal || earliest >= meal + crew.mealMinutes)
      return earliest;
    return meal + crew.mealMinutes;
  };
  const timed = looks.map((look) => {
    let reached = Math.max(call, ...look.talents.map((talent) => talentFree.get(talent) ?? call));
    let from: number | null = null;
    const hair = [chairs, look.hair] as const;
    const change = [dressers, look.change] as const;
    for (const [helpers, minutes] of look.isMakeupFirst ? [hair, change] : [change, hair]) {
      if (minutes === 0) continue;
      const helper = helpers.indexOf(Math.min(...helpers));
      const start = begun(Math.max(reached, helpers[helper]!), minutes);
      from ??= start;
      reached = start + minutes;
      helpers[helper] = reached;
      ends.push(reached);
    }
    const start = begun(Math.max(reached, cameraFree), look.shooting);
    const end = start + look.shooting;
    cameraFree = end;
    for (const talent of look.talents) talentFree.set(talent, end);
    ends.push(end);
    return { from: from ?? reached, ready: reached, start, end };
  });
  return { looks: timed, ends };
}
