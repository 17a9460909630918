import type { GeneratorValue } from "fast-check";
import fc from "fast-check";

/** Draws for one case, which the runner shrinks as it does any other. */
export interface Drawn {
  readonly whole: (from: number, to: number) => number;
  readonly one: <T>(of: readonly T[]) => T;
  /** True so many times in a hundred. */
  readonly often: (inHundred: number) => boolean;
  readonly shuffled: <T>(of: readonly T[]) => T[];
}

/** The draws of a case from the runner's generator. */
export function drawnFrom(value: GeneratorValue): Drawn {
  const whole = (from: number, to: number): number => value(fc.integer, { min: from, max: to });
  return {
    whole,
    one: (of) => of[whole(0, of.length - 1)]!,
    often: (inHundred) => whole(1, 100) <= inHundred,
    shuffled: (of) => value(() => fc.shuffledSubarray([...of], { minLength: of.length })),
  };
}
