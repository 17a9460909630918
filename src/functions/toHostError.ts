import type { Problem } from "../domain/problem";
import { sayProblem, wording } from "../domain/wording";

/** The error a host shows in a cell: #VALUE! for bad input, #N/A where there is nothing to compute from, each with its sentence. */
export function toHostError(problem: Problem): Error {
  const sentence = sayProblem(problem);
  const nothing = wording[problem.reason].kind === "nothing to compute";
  // In a plain page there is no host object; its absence must not hide the sentence.
  if (typeof CustomFunctions === "undefined" || CustomFunctions.Error === undefined) return new Error(sentence);
  const code = nothing ? CustomFunctions.ErrorCode.notAvailable : CustomFunctions.ErrorCode.invalidValue;
  return new CustomFunctions.Error(code, sentence) as unknown as Error;
}
