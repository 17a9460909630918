import { fail } from "../fail";
import type { Outcome } from "../outcome";

/** The problem of a week with no open day, on which nothing can be due or sent. */
export function noOpenWeekday(): Outcome<never> {
  const expected = "a week with at least one open day";
  return fail("argument-not-usable", { argument: "weekend", given: "1111111", expected });
}
