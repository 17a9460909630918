import type { Outcome } from "../../src/domain/outcome";

/** What an outcome says, short enough for a table of examples: its value, or the reason that there is none. */
export function reads(outcome: Outcome<unknown>): unknown {
  return outcome.ok ? outcome.value : outcome.problem.reason;
}
