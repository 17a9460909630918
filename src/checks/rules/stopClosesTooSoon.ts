import { beginTimes } from "../../domain/runs/beginTimes";
import { msFromDays } from "../../domain/runs/msFromDays";
import { travelMinutes } from "../../domain/runs/travelMinutes";
import { usualTravel } from "../../domain/runs/usualTravel";
import { visitEnd } from "../../domain/runs/visitEnd";
import { sayClock } from "../../domain/sayClock";
import type { Stop } from "../../domain/runs/stop";
import { readStops } from "../../sheet/readStops";
import { defineRule } from "../defineRule";

const MS_A_MINUTE = 60_000;
const MS_A_DAY = 86_400_000;

/**
 * The way is reckoned as RUNORDER reckons it, so this is a hint and no proof; stops that cannot be met however short the way have a finding
 * of their own. Only what hours and places are known of is counted: where nothing says when one sets out, nobody is late.
 */
export const stopClosesTooSoon = defineRule({
  id: "stopClosesTooSoon",
  about:
    "A stop whose door closes before one can be there by the way alone, from the start or from the stop listed before it.",
  why: "A door closed in one's face is a wasted trip, and a return that is late.",
  severity: "note",
  fixable: false,
  scope: "table",
  tables: ["stops"],
  needs: ["stop", "latitude", "longitude"],
  messages: {
    fromStart:
      "It closes at {{closes}}, and {{from}}, left at {{leaves}} at the earliest, is about {{minutes}} minutes away at {{speed}} km an hour. Set out sooner, or go another day.",
    fromBefore:
      "It closes at {{closes}}, and {{from}}, listed before it and left at {{leaves}} at the earliest, is about {{minutes}} minutes away at {{speed}} km an hour. TACK.RUNORDER finds an order that fits, if there is one.",
  },
  check(table, report) {
    const stops = readStops(table, true);
    const start = stops[0];
    if (start?.problem !== null) return;
    const from = start.opening === null ? -Infinity : Math.min(...start.opening.map(({ from: opens }) => opens));
    const setOut = { stop: start, leaveMs: msFromDays(from) + start.minutes * MS_A_MINUTE };
    let before = setOut;
    stops.forEach((stop, index) => {
      if (index === 0 || stop.problem !== null) return;
      const begins = beginTimes(stop);
      if (begins.length === 0) return;
      const late = [setOut, before].find((place) => reachedMs(place, stop) > begins.at(-1)!);
      // However short the way: that is another rule's.
      if (setOut.leaveMs > begins.at(-1)!) return;
      if (late === undefined) {
        before = { stop, leaveMs: leftMs(stop, begins, reachedMs(before, stop)) };
        return;
      }
      const data = {
        closes: sayClock((begins.at(-1)! + stop.minutes * MS_A_MINUTE) / MS_A_DAY),
        from: late.stop.said,
        leaves: sayClock(late.leaveMs / MS_A_DAY),
        minutes: Math.round(minutesBetween(late.stop, stop)),
        speed: usualTravel.kmPerHour,
      };
      const messageId = late === setOut ? "fromStart" : "fromBefore";
      const field = table.columnOf["close"] === undefined ? "open" : "close";
      report({ row: { table, row: table.dataRows[index]! }, field, messageId, data });
    });
  },
});

function minutesBetween(one: Stop, other: Stop): number {
  return travelMinutes(one.place!, other.place!, usualTravel.kmPerHour, usualTravel.detour);
}

function reachedMs({ stop, leaveMs }: { readonly stop: Stop; readonly leaveMs: number }, next: Stop): number {
  return leaveMs + minutesBetween(stop, next) * MS_A_MINUTE;
}

/** Who comes at no known time to a door that is always open leaves it at none. */
function leftMs(stop: Stop, begins: readonly number[], arriveMs: number): number {
  const visitMs = stop.minutes * MS_A_MINUTE;
  return stop.opening === null ? arriveMs + visitMs : visitEnd({ beginMs: [begins], visitMs: [visitMs] }, 0, arriveMs);
}
