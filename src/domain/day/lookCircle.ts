import type { Look } from "./look";

/** The looks of a circle in After, each after the next and the first once more at the end; null where there is none. Unknown keys are passed over. */
export function lookCircle<L extends Pick<Look, "key" | "after">>(looks: readonly L[]): readonly L[] | null {
  const lookOf = new Map(looks.map((look) => [look.key, look]));
  const done = new Set<string>();
  for (const start of looks) {
    // A walk with its own path and not a recursion: a long chain of looks must not exhaust the stack.
    const path: L[] = [];
    const onPath = new Set<string>();
    const nextAfter: number[] = [];
    let look: L | undefined = done.has(start.key) ? undefined : start;
    while (look !== undefined) {
      path.push(look);
      onPath.add(look.key);
      nextAfter.push(0);
      look = undefined;
      while (path.length > 0 && look === undefined) {
        const last = path.at(-1)!;
        const key: string | undefined = last.after[nextAfter[path.length - 1]!++];
        if (key === undefined) {
          done.add(last.key);
          onPath.delete(last.key);
          path.pop();
          nextAfter.pop();
          continue;
        }
        const before = lookOf.get(key);
        if (before === undefined || done.has(key)) continue;
        if (onPath.has(key)) return [...path.slice(path.indexOf(before)), before];
        look = before;
      }
    }
  }
  return null;
}
