import { sayCount } from "../sayCount";
import { sayList } from "../sayList";
import type { OpenFinding } from "./OpenFinding";
import { severities } from "./severities";

/** How many of each severity are open, "3 errors, 12 warnings and 1 note"; "Nothing found" when there are none. */
export function sayStanding(open: readonly OpenFinding[]): string {
  if (open.length === 0) return "Nothing found";
  const parts = severities.flatMap(({ id, one, many }) => {
    const count = open.filter(({ finding }) => finding.severity === id).length;
    return count === 0 ? [] : [sayCount(count, one, many)];
  });
  return sayList(parts);
}
