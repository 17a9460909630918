import { keepsRules } from "./keepsRules";
import type { OrderTask } from "./orderTask";
import type { Stepwise } from "./stepwise";

/**
 * An order that costs no more and is nearer to the things as they are numbered, as far as moving single things back brings it.
 *
 * Nearer means that fewer pairs stand the other way about. Things far out of place go first; at most `tries` things and orders are tried.
 */
export function* orderTowardsGiven(
  task: OrderTask,
  order: readonly number[],
  tries: number,
): Stepwise<readonly number[]> {
  const limit = task.cost(order);
  let nearest = [...order];
  let triesLeft = tries;

  /** The nearest order that one thing's move makes and that is still good enough, or null. */
  function moved(thing: number): number[] | null {
    triesLeft--;
    const from = nearest.indexOf(thing);
    const rest = nearest.filter((other) => other !== thing);
    const turnedAt = pairsTurned(rest, thing);
    const better = turnedAt
      .map((_, place) => place)
      .filter((place) => turnedAt[place]! < turnedAt[from]!)
      .sort((a, b) => turnedAt[a]! - turnedAt[b]!);
    for (const place of better) {
      const tried = [...rest.slice(0, place), thing, ...rest.slice(place)];
      if (!keepsRules(task, tried)) continue;
      if (triesLeft-- <= 0) return null;
      if (task.cost(tried) <= limit) return tried;
    }
    return null;
  }

  for (let isStill = false; !isStill && triesLeft > 0;) {
    isStill = true;
    const farthestFirst = nearest.map((thing, place) => ({ thing, away: Math.abs(place - thing) }));
    farthestFirst.sort((a, b) => b.away - a.away);
    for (const { thing } of farthestFirst) {
      if (triesLeft <= 0) break;
      yield;
      const tried = moved(thing);
      if (tried === null) continue;
      nearest = tried;
      isStill = false;
    }
  }
  return nearest;
}

/** By place among the others: with how many of them the thing would stand the other way about. */
function pairsTurned(rest: readonly number[], thing: number): number[] {
  let turned = rest.filter((other) => other < thing).length;
  const turnedAt = [turned];
  for (const other of rest) turnedAt.push((turned += other < thing ? -1 : 1));
  return turnedAt;
}
