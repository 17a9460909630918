import type { KeptChoices } from "../../sheet/keptChoices";

/** The choices after those of one sheet were given to another (behind its own, which count), or were dropped (null). */
export function movedChoices(choices: KeptChoices, from: string, to: string | null): KeptChoices {
  return {
    columns: moved(choices.columns, from, to, (one, other) => one.kind === other.kind && one.field === other.field),
    kinds: moved(choices.kinds, from, to, () => false),
  };
}

function moved<T>(
  lists: Readonly<Record<string, readonly T[]>>,
  from: string,
  to: string | null,
  contradict: (one: T, other: T) => boolean,
): Readonly<Record<string, readonly T[]>> {
  const given = Object.hasOwn(lists, from) ? lists[from]! : [];
  const others = Object.entries(lists).filter(([name]) => name !== from && name !== to);
  if (to === null) return Object.fromEntries(others);
  const own = Object.hasOwn(lists, to) ? lists[to]! : [];
  const both = [...own, ...given.filter((one) => !own.some((other) => contradict(one, other)))];
  return Object.fromEntries(both.length === 0 ? others : [...others, [to, both]]);
}
