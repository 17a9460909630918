import type { BagLoad } from "../../../../src/domain/carry/bags/bagLoad";

/** Things by their weights, as the packing takes them. */
export function loadOf(things: readonly number[], capacity: number): BagLoad {
  const weights = [...new Set(things)].sort((one, other) => other - one);
  return { capacity, weights, counts: weights.map((weight) => things.filter((thing) => thing === weight).length) };
}
