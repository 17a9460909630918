import { sayStanding } from "./sayStanding";
import { useSplitFindings } from "./useSplitFindings";

/** How the check stands, as text for a live region. */
export function OpenStanding() {
  const split = useSplitFindings();
  return <>{split === null ? "" : `Check: ${sayStanding(split.open)}.`}</>;
}
