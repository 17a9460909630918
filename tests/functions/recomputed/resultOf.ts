import { outcomeOf } from "../outcomeOf";

/** What a function gives; an error of its is thrown. */
export function resultOf(id: string, ...args: readonly unknown[]): unknown {
  const outcome = outcomeOf(id.toLowerCase(), args);
  if ("error" in outcome) throw new Error(outcome.error.message);
  return outcome.result;
}
