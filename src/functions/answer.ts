import type { Outcome } from "../domain/outcome";
import type { ColumnFormat, ResultCell } from "../domain/resultTable";
import { problemIn } from "./problemIn";
import { toHostCell } from "./toHostCell";
import { toHostError } from "./toHostError";

/** Hands one result to its cell, or throws the host's error with the sentence. */
export function answer(outcome: Outcome<ResultCell>, format: ColumnFormat = "as is"): unknown {
  if (!outcome.ok) throw toHostError(outcome.problem);
  const problem = problemIn(outcome.value);
  if (problem !== null) throw toHostError(problem);
  return toHostCell(outcome.value, format);
}
