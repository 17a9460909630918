/**
 * The chance that a PERT change stays under a share x of its range, in closed form: the beta distribution's, whose shapes are
 * whole numbers where the peak is at a whole quarter of the range. Sums of binomial terms (Abramowitz and Stegun 26.5.4 and 6.6.4, from memory).
 */
export function betaBelow(peakQuarters: 0 | 1 | 2 | 3 | 4, x: number): number {
  const first = 1 + peakQuarters;
  // I_x(a, b) with a + b = 6 is the chance of at least a heads in 5 throws of a coin that shows them with chance x.
  const ways = [1, 5, 10, 10, 5, 1];
  return ways.reduce(
    (sum, count, heads) => (heads < first ? sum : sum + count * x ** heads * (1 - x) ** (5 - heads)),
    0,
  );
}
