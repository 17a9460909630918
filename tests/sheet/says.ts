import type { Outcome } from "../../src/domain/outcome";
import { sayProblem } from "../../src/domain/wording";

/** What an outcome says: its value, or the sentence that there is none. */
export function says(outcome: Outcome<unknown>): unknown {
  return outcome.ok ? outcome.value : sayProblem(outcome.problem);
}
