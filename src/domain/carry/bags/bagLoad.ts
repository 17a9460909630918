/** Things to pack: their distinct weights, the heaviest first, how many there are of each, and what one bag may hold. Whole numbers, none above the capacity. */
export interface BagLoad {
  readonly capacity: number;
  readonly weights: readonly number[];
  readonly counts: readonly number[];
}

/** One bag: the places in `weights` of the things in it. */
export type Bag = readonly number[];
