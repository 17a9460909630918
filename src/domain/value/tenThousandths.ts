/**
 * Money as whole ten-thousandths of its unit, so that sums are exact.
 *
 * Sums of fractions drift (0.1 + 0.2); whole numbers add exactly up to 9 007 199 254 740 991, here more
 * than 900 billion. Four places, not two, since some currencies have three.
 */
export function tenThousandths(amount: number): number {
  return Math.round(amount * 10_000);
}
