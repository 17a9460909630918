import { sayMinutes } from "../sayMinutes";
import { sayClock } from "../../domain/sayClock";
import type { TriedDay } from "./TriedDay";

/** What an order comes to: its end against the wrap and against the order given. `wrap` is a fraction of a day. */
export function sayTriedEnd(tried: TriedDay, wrap: number | null, isGiven: boolean): string {
  if (tried.ends === null) return tried.sentence ?? "";
  const parts = [`The last shot ends at ${sayClock(tried.ends)}`];
  const { minutesSpareAtWrap: spare, minutesSooner: sooner } = tried;
  if (wrap !== null && spare !== null) {
    parts.push(`${sayMinutes(Math.abs(spare))} ${spare < 0 ? "after" : "before"} the wrap at ${sayClock(wrap)}`);
  }
  if (isGiven) parts.push("in the order given");
  else if (sooner !== null) {
    parts.push(
      sooner === 0
        ? "as in the order given"
        : `${sayMinutes(Math.abs(sooner))} ${sooner > 0 ? "sooner" : "later"} than in the order given`,
    );
  }
  return `${parts.join(", ")}.`;
}
