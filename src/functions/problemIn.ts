import { isProblem } from "../domain/isProblem";
import type { Problem } from "../domain/problem";
import type { ResultCell } from "../domain/resultTable";

/** What keeps a result from being shown: the problem it is, or that it is no finite number, which hosts would show as 0. Else null. */
export function problemIn(cell: ResultCell): Problem | null {
  if (typeof cell === "number") {
    return Number.isFinite(cell) ? null : { reason: "result-not-finite", facts: { what: "The result" } };
  }
  return isProblem(cell) ? cell : null;
}
