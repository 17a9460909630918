/**
 * Whole numbers from 0 to 4,294,967,295 that look drawn by lot: xoshiro128** 1.1 of D. Blackman and S. Vigna (public domain, 2018).
 *
 * 32-bit whole-number steps alone, so the same state gives the same numbers in every runtime. The state may not be all 0.
 */
export function xoshiro128(state: readonly [number, number, number, number]): () => number {
  let [a, b, c, d] = state;
  return () => {
    const drawn = Math.imul(rotated(Math.imul(b, 5), 7), 9) >>> 0;
    const shifted = b << 9;
    c ^= a;
    d ^= b;
    b ^= c;
    a ^= d;
    c ^= shifted;
    d = rotated(d, 11);
    return drawn;
  };
}

function rotated(word: number, bits: number): number {
  return (word << bits) | (word >>> (32 - bits));
}
