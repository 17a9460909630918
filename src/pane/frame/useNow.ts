import { useContext, useEffect, useState } from "react";
import { clockContext } from "./clockContext";

const HALF_A_MINUTE_MS = 30_000;

/** The time of day, as a fraction of the day, kept up with while `isWanted`; null where it is not, or no clock is given. */
export function useNow(isWanted: boolean): number | null {
  const clock = useContext(clockContext);
  const [, tick] = useState(0);
  useEffect(() => {
    if (clock === null || !isWanted) return undefined;
    const timer = setInterval(() => tick((count) => count + 1), HALF_A_MINUTE_MS);
    return () => clearInterval(timer);
  }, [clock, isWanted]);
  return clock === null || !isWanted ? null : clock();
}
