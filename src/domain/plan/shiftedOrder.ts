import { seededRandom } from "../seededRandom";
import { allBefore } from "./allBefore";
import { keepsRules } from "./keepsRules";
import type { OrderTask } from "./orderTask";
import type { Stepwise } from "./stepwise";

/** How long to search: `tries` orders are costed, or fewer where one costs no more than `target`. */
export interface SearchEffort {
  readonly tries: number;
  readonly seed: number;
  readonly target: number;
}

/** An order and what it costs. */
export interface CostedOrder {
  readonly order: readonly number[];
  readonly cost: number;
}

/** A move shifts at most this share of the things. */
const LARGEST_BLOCK = 1 / 3;
/** Tries for each remembered cost: the more tries, the longer the memory and the slower it settles. */
const TRIES_A_MEMORY = 400;
/** Things ordered, over all tries, between two stops for breath. */
const THINGS_A_BREATH = 10_000;
/** Tries between two polishings. */
const TRIES_A_POLISH = 50;

/**
 * A better order, by shifting blocks of things from the order given: late acceptance hill climbing (Burke and Bykov 2017).
 *
 * Each try moves a block of neighbours elsewhere, as far as the rules allow, and is kept if it costs no more than the
 * order now, or than the order some tries ago. `start` keeps the rules; so does the result, which never costs more.
 * The same effort gives the same order everywhere.
 */
export function* shiftedOrder(task: OrderTask, start: readonly number[], effort: SearchEffort): Stepwise<CostedOrder> {
  const random = seededRandom(effort.seed);
  const upTo = (bound: number): number => Math.floor(random() * bound);
  const before = allBefore(task.before);
  const fixedAt = new Map(task.placeOf.map((place, thing) => [place, thing]));
  const isMovable = (thing: number): boolean => task.placeOf[thing]! < 0;
  const hasInnerFixed =
    task.placeOf.some((place) => place > 0 && place < task.count - 1) && before.some((b) => b.size > 0);
  const whole = [...start];
  const wholeOf = (movable: readonly number[]): number[] => {
    for (let place = 0, next = 0; place < task.count; place++) whole[place] = fixedAt.get(place) ?? movable[next++]!;
    return whole;
  };

  let tries = 1;
  let current = start.filter(isMovable);
  let currentCost = task.cost(start);
  let best: CostedOrder = { order: [...start], cost: currentCost };
  const memory = new Array<number>(Math.max(1, Math.floor(effort.tries / TRIES_A_MEMORY))).fill(currentCost);
  const largestBlock = Math.max(1, Math.floor(current.length * LARGEST_BLOCK));

  function consider(movable: number[], acceptBelow: number): void {
    tries++;
    const order = wholeOf(movable);
    const cost = hasInnerFixed && !keepsRules(task, order) ? Infinity : task.cost(order);
    if (cost <= currentCost || cost <= acceptBelow) {
      current = movable;
      currentCost = cost;
    }
    if (cost < best.cost) best = { order: [...order], cost };
  }

  const turnsABreath = Math.ceil(THINGS_A_BREATH / task.count);
  if (current.length < 2) return best;
  for (let turn = 0; tries < effort.tries && best.cost > effort.target; turn++) {
    if (turn % turnsABreath === 0) yield;
    const length = 1 + upTo(Math.min(largestBlock, current.length - 1));
    const moved = withBlockShifted(
      current,
      before,
      upTo(current.length - length + 1),
      length,
      upTo(current.length - length + 1),
    );
    const slot = turn % memory.length;
    if (moved === null) tries++;
    else consider(moved, memory[slot]!);
    memory[slot] = Math.min(memory[slot]!, currentCost);
    if (task.polish !== undefined && turn % TRIES_A_POLISH === 0) {
      consider(task.polish(wholeOf(current)).filter(isMovable), -Infinity);
    }
  }
  return best;
}

/** The order with a block shifted towards a place, up to the first thing that must stay on its side; null where it cannot move. */
function withBlockShifted(
  order: readonly number[],
  before: readonly ReadonlySet<number>[],
  from: number,
  length: number,
  towards: number,
): number[] | null {
  const block = order.slice(from, from + length);
  const inBlock = new Set(block);
  const beforeBlock = new Set<number>();
  for (const thing of block) for (const other of before[thing]!) beforeBlock.add(other);
  const follows = (thing: number): boolean => {
    for (const other of before[thing]!) if (inBlock.has(other)) return true;
    return false;
  };
  let place = from;
  while (place < towards && !follows(order[place + length]!)) place++;
  while (place > towards && !beforeBlock.has(order[place - 1]!)) place--;
  if (place === from) return null;
  const moved = [...order];
  moved.copyWithin(
    place < from ? place + length : from,
    place < from ? place : from + length,
    place < from ? from : place + length,
  );
  for (let at = 0; at < length; at++) moved[place + at] = block[at]!;
  return moved;
}
