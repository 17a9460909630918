import { fail } from "../domain/fail";
import { needed } from "../domain/needed";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readNumber } from "../sheet/readNumber";

/**
 * Several needed numbers by their arguments' names, none below 0, and those in `aboveZero` not 0 either: a cell left blank may arrive
 * as 0, which must not pass for a measure where it makes no sense. `units` ends the sentence that says what to give. Problems: argument-missing, argument-not-usable and those of readNumber.
 */
export function numberArguments<Name extends string>(
  raws: Readonly<Record<Name, unknown>>,
  aboveZero: readonly NoInfer<Name>[],
  units?: Readonly<Partial<Record<NoInfer<Name>, string>>>,
): Outcome<Record<Name, number>> {
  const numbers = {} as Record<Name, number>;
  for (const argument of Object.keys(raws) as Name[]) {
    const isZeroRefused = aboveZero.includes(argument);
    const expected = `a number ${isZeroRefused ? "above 0" : "of 0 or more"}${units?.[argument] ?? ""}`;
    const number = needed(readNumber(raws[argument], argument, expected), argument, expected);
    if (!number.ok) return number;
    const { value } = number;
    if (value < 0 || (value === 0 && isZeroRefused))
      return fail("argument-not-usable", { argument, given: showGiven(value), expected });
    numbers[argument] = value;
  }
  return succeed(numbers);
}
