import { xoshiro128 } from "./xoshiro128";

/** The first digits of pi in base 16: three words nobody chose. */
const PI_WORDS = [0x243f6a88, 0x85a308d3, 0x13198a2e] as const;
/** By then seeds that differ in one bit no longer resemble each other. */
const WARMING_UP = 20;

/** Numbers from 0 up to but not with 1, the same for one seed everywhere. Of a seed its lowest 32 bits count. */
export function seededRandom(seed: number): () => number {
  const draw = xoshiro128([seed | 0, ...PI_WORDS]);
  for (let step = 0; step < WARMING_UP; step++) draw();
  return () => draw() / 2 ** 32;
}
