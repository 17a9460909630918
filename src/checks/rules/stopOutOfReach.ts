import { beginTimes } from "../../domain/runs/beginTimes";
import { readStops } from "../../sheet/readStops";
import { defineRule } from "../defineRule";
import { sayClock } from "../../domain/sayClock";

/** Only what is sure without knowing the way: the road to a stop is counted as no time at all. */
export const stopOutOfReach = defineRule({
  id: "stopOutOfReach",
  about: "A stop whose visit is longer than its door is open, or whose door closes before the run's start may be left.",
  why: "Such a stop cannot be met in any order, and is found out on the doorstep.",
  severity: "error",
  fixable: false,
  scope: "table",
  tables: ["stops"],
  needs: ["stop"],
  messages: {
    tooShort: "The door is never open for {{minutes}} minutes together. Shorten the visit, or correct the times.",
    tooLate:
      "The door closes at {{closes}}, and {{start}} is left at {{leaves}} at the earliest. Start sooner, or go another day.",
  },
  check(table, report) {
    const stops = readStops(table, false);
    const start = stops[0];
    const leaves = start?.problem === null ? Math.min(...(start.opening ?? []).map(({ from }) => from)) : Infinity;
    stops.forEach((stop, index) => {
      if (index === 0 || stop.problem !== null || stop.opening === null || stop.opening.length === 0) return;
      const row = { table, row: table.dataRows[index]! };
      const closes = Math.max(...stop.opening.map(({ until }) => until));
      if (beginTimes(stop).length === 0) {
        report({ row, field: "minutes", messageId: "tooShort", data: { minutes: stop.minutes } });
      } else if (leaves < Infinity && closes < leaves + stop.minutes / 1440) {
        const data = { closes: sayClock(closes), start: start!.said, leaves: sayClock(leaves) };
        report({ row, field: table.columnOf["close"] === undefined ? "open" : "close", messageId: "tooLate", data });
      }
    });
  },
});
