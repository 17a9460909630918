import { fail } from "./fail";
import type { Outcome } from "./outcome";

/** What was read where it may not be blank: blank becomes argument-missing, which says what to give. */
export function needed<T>(outcome: Outcome<T | null>, argument: string, expected: string): Outcome<T> {
  if (!outcome.ok) return outcome;
  if (outcome.value === null) return fail("argument-missing", { argument, expected });
  return { ok: true, value: outcome.value };
}
