import type { ChangeRange } from "./changeRange";

const CELLS = 256;

/**
 * The minutes that a change stays under with a given chance, from 0 up to 1, by the beta distribution of the PERT method.
 *
 * Its mean is (low + 4 likely + high) / 6, as D. Malcolm and others published it (Operations Research 7, 1959); the shapes
 * 1 + 4 (likely - low) / (high - low) and 1 + 4 (high - likely) / (high - low), which give that mean and put the peak at the
 * likely figure, are those of the manual of mc2d, a library for R. One draw a change, and more chance never means
 * fewer minutes: so a chance changes little where a figure does.
 */
export function pertQuantile({ low, likely, high }: ChangeRange): (chance: number) => number {
  const peak = (likely - low) / (high - low);
  // As a share of the range, and 1 at the peak. With a peak at either end one factor is (x / 0) ** 0, which is 1.
  const density = (x: number): number => (x / peak) ** (4 * peak) * ((1 - x) / (1 - peak)) ** (4 * (1 - peak));
  const below = [0];
  for (let cell = 0; cell < CELLS; cell++) {
    const [from, middle, until] = [0, 0.5, 1].map((part) => density((cell + part) / CELLS)) as [number, number, number];
    below.push(below[cell]! + from + 4 * middle + until); // Simpson's rule
  }
  const whole = below[CELLS]!;
  return (chance) => {
    const wanted = chance * whole;
    let first = 0;
    let last = CELLS;
    while (last - first > 1) {
      const middle = (first + last) >> 1;
      if (below[middle]! > wanted) last = middle;
      else first = middle;
    }
    const part = (wanted - below[first]!) / (below[last]! - below[first]!);
    return low + ((first + part) / CELLS) * (high - low);
  };
}
