import type { Outcome } from "./outcome";
import type { ReasonFacts, Reason, Problem } from "./problem";

/** The outcome that carries a reason from the closed list, with its facts. */
export function fail<R extends Reason>(reason: R, facts: ReasonFacts[R]): Outcome<never> {
  return { ok: false, problem: { reason, facts } as unknown as Problem };
}
