import { fail } from "../domain/fail";
import type { OpeningSpan } from "../domain/loans/openingSpan";
import type { Outcome } from "../domain/outcome";
import type { Problem } from "../domain/problem";
import type { Place } from "../domain/runs/place";
import type { Stop } from "../domain/runs/stop";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { readCell } from "./readCell";
import { readDate } from "./readDate";
import { readDegrees } from "./readDegrees";
import { readOpening } from "./readOpening";
import { readText } from "./readText";
import { readTimeOfDay } from "./readTimeOfDay";
import { readTravelMinutes } from "./readTravelMinutes";
import type { Table } from "./table";

/**
 * The rows of a stops table in sheet order, with their places where `placed` asks for them.
 *
 * Where "Receives until" or "Cut-off" says a time, the door counts as closed from then on. Due as a day says how urgent a stop is; as a
 * time of day it is the latest end of the visit, and comes before every day. None of the three counts at the start, the first row.
 * A 0 is blank but in minutes and degrees, and a place of 0 and 0 is blank too. The first cell of a row that cannot be read is its
 * problem, named by heading and row.
 */
export function readStops(table: Table, placed: boolean): readonly Stop[] {
  return table.dataRows.map((row, index) => readStop(table, row, index === 0, placed));
}

function readStop(table: Table, row: number, isStart: boolean, placed: boolean): Stop {
  let problem: Problem | null = null;
  const nameOf = (field: string): string => `${table.headings[table.columnOf[field] ?? -1] || field}, row ${row + 1}`;

  function valueOf<T>(outcome: Outcome<T>): T | null {
    if (outcome.ok) return outcome.value;
    problem ??= outcome.problem;
    return null;
  }
  function cellOf(field: string): unknown {
    const column = table.columnOf[field];
    const cell = column === undefined ? null : readCell(table.cells[row]![column]);
    return cell === 0 && field !== "latitude" && field !== "longitude" ? null : cell;
  }

  const name = readText(cellOf("stop"), nameOf("stop"));
  const said = name.ok && name.value !== null ? showGiven(name.value) : `row ${row + 1}`;
  const minutes = valueOf(readTravelMinutes(cellOf("minutes"), nameOf("minutes"))) ?? 0;
  const opening = valueOf(readOpening(cellOf("open"), cellOf("close"), nameOf("open"), nameOf("close")));
  const place = placed ? valueOf(readPlace()) : null;
  // At the start nothing is handed over.
  const dueCell = isStart ? null : cellOf("due");
  const dueTime = typeof dueCell === "number" && dueCell >= 2 ? null : readTimeOfDay(dueCell, "");
  const due = dueTime?.ok ? dueTime.value : valueOf(readDate(dueCell, nameOf("due")));
  const latest = (isStart ? [] : ["receivesUntil", "cutOff"]).map((field) =>
    valueOf(readTimeOfDay(cellOf(field), nameOf(field))),
  );
  return {
    name: !name.ok
      ? name.problem
      : (name.value ?? {
          reason: "argument-missing",
          facts: { argument: nameOf("stop"), expected: "the stop's name" },
        }),
    said,
    minutes,
    opening: closedFrom(opening, [...latest, dueTime?.ok ? dueTime.value : null]),
    due,
    place,
    problem,
  };

  function readPlace(): Outcome<Place> {
    const latitude = readDegrees(cellOf("latitude"), nameOf("latitude"), 90);
    if (!latitude.ok) return latitude;
    const longitude = readDegrees(cellOf("longitude"), nameOf("longitude"), 180);
    if (!longitude.ok) return longitude;
    const [north, east] = [latitude.value, longitude.value];
    if (north !== null && east !== null && (north !== 0 || east !== 0))
      return succeed({ latitude: north, longitude: east });
    const field = north === null || east !== null ? "latitude" : "longitude";
    return fail("argument-missing", {
      argument: nameOf(field),
      expected: "degrees such as 51.5074, or minutesBetween",
    });
  }
}

/** The opening with its end brought forward; without hours of its own a door is open from 00:00 until then. */
function closedFrom(
  opening: readonly OpeningSpan[] | null,
  latest: readonly (number | null)[],
): readonly OpeningSpan[] | null {
  const until = Math.min(...latest.map((time) => time ?? Infinity));
  if (until === Infinity) return opening;
  return (opening ?? [{ from: 0, until }])
    .filter(({ from }) => from <= until)
    .map((span) => ({ from: span.from, until: Math.min(span.until, until) }));
}
