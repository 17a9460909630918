/** A word above a picture, and the place it speaks of. */
export interface Label {
  readonly word: string;
  readonly at: number;
}

const LETTER_WIDTH = 6;
const LEAST_GAP = 4;

/** The middle of each label, beside its place or as near as may be, so that no two touch and none leaves the picture. In the order of their places. */
export function spreadLabels(
  labels: readonly Label[],
  width: number,
): readonly (Label & { readonly middle: number })[] {
  const sorted = [...labels].sort((a, b) => a.at - b.at);
  const middles = sorted.map(({ at }) => at);
  const half = (index: number): number => (sorted[index]!.word.length * LETTER_WIDTH) / 2;
  const apart = (index: number): number => half(index - 1) + half(index) + LEAST_GAP;
  for (let index = 0; index < sorted.length; index++) {
    const least = index === 0 ? half(0) : middles[index - 1]! + apart(index);
    middles[index] = Math.max(middles[index]!, least);
  }
  for (let index = sorted.length - 1; index >= 0; index--) {
    const most = index === sorted.length - 1 ? width - half(index) : middles[index + 1]! - apart(index + 1);
    middles[index] = Math.min(middles[index]!, most);
  }
  return sorted.map((label, index) => ({ ...label, middle: middles[index]! }));
}
