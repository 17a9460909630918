import { isProblem } from "../isProblem";
import type { ChaseDays } from "./chaseDays";
import type { RequestRow } from "./requestRow";

/** Why a request is to be chased, or that it cannot be told because cells cannot be read. */
export type ChaseReason = "unanswered" | "not collected" | "untold";

/**
 * Why a request is to be chased; null where it is not.
 *
 * Unanswered: asked by the last day to chase, and the answer is blank with no day answered, or waiting. Not collected:
 * something is lent and the need is near or past. A no ends it, and so does what is collected.
 */
export function chaseReason(request: RequestRow, { lastAsked, lastNear }: ChaseDays): ChaseReason | null {
  const { answer } = request;
  if (answer === "no") return null;
  const { collected } = request;
  if (collected === true) return null;
  if (isProblem(answer) || isProblem(collected)) return "untold";
  const answered = answer === null ? request.answered : null;
  if (isProblem(answered)) return "untold";
  if (answer === "waiting" || (answer === null && answered === null)) {
    const { asked } = request;
    if (isProblem(asked)) return "untold";
    return asked !== null && asked <= lastAsked ? "unanswered" : null;
  }
  const { neededBy } = request;
  if (isProblem(neededBy)) return "untold";
  return neededBy !== null && neededBy <= lastNear ? "not collected" : null;
}
