import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { readNumber } from "./readNumber";

const EXPECTED = "a share from 0 to 1, such as 0.3 or 30%";

/** A share of a whole, 0 to 1, also written as "30%". Blank is null. Problems: argument-not-usable, number-ambiguous, error-in-cell. */
export function readShare(raw: unknown, argument: string): Outcome<number | null> {
  const share = readNumber(raw, argument, EXPECTED);
  if (!share.ok || share.value === null || (share.value >= 0 && share.value <= 1)) return share;
  return fail("argument-not-usable", { argument, given: showGiven(share.value), expected: EXPECTED });
}
