import type { FreeProfile } from "./freeProfile";
import type { Project } from "./project";

/**
 * When each activity begins, by index, if they are placed one after the other in that order, each as soon as it can be.
 *
 * The serial schedule generation scheme of project scheduling (Kelley 1963): each takes the first gap that is long and
 * wide enough, also one before an activity placed earlier. `order` names every activity once, after all that come before it.
 */
export function serialSchedule(project: Project, order: readonly number[]): number[] {
  const starts = new Array<number>(project.activities.length).fill(0);
  const profile: FreeProfile = { times: [0], free: [...project.capacities] };
  for (const index of order) {
    const { length, releasedAt, before, needs } = project.activities[index]!;
    let earliest = releasedAt;
    for (const other of before) earliest = Math.max(earliest, starts[other]! + project.activities[other]!.length);
    starts[index] = length === 0 ? earliest : takeFirstGap(profile, earliest, length, needs);
  }
  return starts;
}

/** Takes what is needed from the first gap that does not begin before `earliest`, and says when it begins. */
function takeFirstGap(profile: FreeProfile, earliest: number, length: number, needs: readonly number[]): number {
  const { times, free } = profile;
  let first = times.length - 1;
  while (times[first]! > earliest) first--;
  let start = earliest;
  for (let at = first; at < times.length && times[at]! < start + length; at++) {
    if (suffices(free, at, needs)) continue;
    first = at + 1;
    start = times[first]!;
  }
  const from = splitAt(profile, start, first);
  const until = splitAt(profile, start + length, from);
  for (let at = from; at < until; at++) {
    for (let resource = 0; resource < needs.length; resource++) free[at * needs.length + resource]! -= needs[resource]!;
  }
  return start;
}

function suffices(free: readonly number[], at: number, needs: readonly number[]): boolean {
  for (let resource = 0; resource < needs.length; resource++) {
    if (free[at * needs.length + resource]! < needs[resource]!) return false;
  }
  return true;
}

/** The place at which a stretch begins at that moment, made if there is none; sought from place `from` on. */
function splitAt({ times, free }: FreeProfile, moment: number, from: number): number {
  let at = from;
  while (at < times.length && times[at]! < moment) at++;
  if (times[at] === moment) return at;
  const width = free.length / times.length;
  times.splice(at, 0, moment);
  free.splice(at * width, 0, ...free.slice((at - 1) * width, at * width));
  return at;
}
