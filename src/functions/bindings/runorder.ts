import { fail } from "../../domain/fail";
import { needed } from "../../domain/needed";
import { planRun } from "../../domain/runs/planRun";
import { runTable } from "../../domain/runs/runTable";
import { travelMinutes } from "../../domain/runs/travelMinutes";
import { usualTravel } from "../../domain/runs/usualTravel";
import { succeed } from "../../domain/succeed";
import { readFlag } from "../../sheet/readFlag";
import { readMinutesBetween } from "../../sheet/readMinutesBetween";
import { readNumberBetween } from "../../sheet/readNumberBetween";
import { readStops } from "../../sheet/readStops";
import { readTable } from "../../sheet/readTable";
import { readTimeOfDay } from "../../sheet/readTimeOfDay";
import { answerTable } from "../answerTable";
import { rangeArgument } from "../rangeArgument";

/**
 * The order of a day's stops that ends soonest and keeps to every door's opening times.
 *
 * @customfunction RUNORDER
 * @family Carrying, preparing, running about
 * @answers In which order do I go round?
 * @param stops The stops with their heading row, columns in any order, the start as first row; needs Stop, and takes Open, Close, Minutes, Latitude, Longitude and Due.
 * @param [minutesBetween] Minutes from row to column, numbers alone: one row and one column for each row of stops in their order, the start first. Left out, they are reckoned from Latitude and Longitude.
 * @param [leaveAt] The time of day one is at the start, such as 09:00; must be given.
 * @param [returnToStart] TRUE (when left out) to end at the start, FALSE to end at the last stop.
 * @param [columns] Which heading means what, where yours is not understood, such as "open=Hours; minutes=Stay".
 * @param [kmPerHour] The speed on the way, where it is reckoned; 20 when left out.
 * @param [detour] How many times as long as the crow flies the way is; 1.3 when left out.
 * @shape A table that spills: Stop, Arrive, Wait, Leave. The start first, then the stops in their order, then those that cannot be met, each with an error, then the start again where the run returns.
 * @units Times of day, past midnight counted on (25:30); Wait and Minutes in minutes. The crow flies on a sphere of 6371.0088 km radius.
 * @blanks Open and Close blank: open at any time; one of them blank: from 00:00 or until 24:00. Minutes blank: 0. Due blank: due last. A stop without a name is planned, with the error in its name.
 * @bounds A visit begins and ends while the door is open; several spans may stand in Open ("10-13, 14-18"). A time in Receives until, Cut-off or Due ends them sooner. The start's Open is from when one may leave, its Close by when one must be back, its Minutes are spent before leaving. Where not all fit, what is due soonest goes first, then as many stops as can be. Proved best up to 20 stops, with opening times or without, as far as a fixed number of steps goes, which sufficed for nearly all runs tried; above 20 the best order found. Twelve stops take about a tenth of a second, 20 mostly less than one and seldom up to three. At most 100 stops; minutes up to 100,000.
 * @errors A stop that cannot be met is #N/A, one with a cell that cannot be read #VALUE!, each in its row; a cell of the start's row or of minutesBetween that cannot be read is #VALUE! for all.
 * @source Held and Karp (1962) with opening times, narrowed after Ascheuer, Fischetti and Grötschel (2001) and bounded after Christofides, Mingozzi and Toth (1981) and Baldacci, Mingozzi and Roberti (2011); haversine with the mean radius of the Geodetic Reference System 1980. 20 km an hour and 1.3 are common practice, no source.
 * @caution Times on the road are guesses, and tired or hurried driving injures: keep to limits, breaks and what you can carry, and ring ahead where a minute decides.
 * @example =TACK.RUNORDER({"Stop","Open","Close","Minutes";"Studio","","","";"Orla","10:00","13:00",15;"Rail & Co","09:00","10:00",10},{0,20,30;20,0,25;30,25,0},TIME(9,0,0)) gives {"Stop","Arrive","Wait","Leave";"Studio","09:00",0,"09:00";"Rail & Co","09:30",0,"09:40";"Orla","10:05",0,"10:20";"Studio","10:40",0,"10:40"}
 * @example =TACK.RUNORDER({"Stop","Open","Minutes";"Studio","","";"Orla","10-13, 14-18",20},{0,30;30,0},"12:15",FALSE) gives {"Stop","Arrive","Wait","Leave";"Studio","12:15",0,"12:15";"Orla","12:45",75,"14:20"}
 * @example =TACK.RUNORDER({"Stop","Latitude","Longitude";"Studio",51.5,-0.12;"Orla",51.5,-0.12},,"09:00") gives {"Stop","Arrive","Wait","Leave";"Studio","09:00",0,"09:00";"Orla","09:00",0,"09:00";"Studio","09:00",0,"09:00"}
 * @example =TACK.RUNORDER({"Stop";"Studio";"Orla"},{0,15},"09:00") fails give 2 rows and 2 columns of minutes
 * @example =TACK.RUNORDER({"Stop";"Studio";"Orla"},,"09:00") fails minutesBetween is blank
 * @returns {any[][]} One row for each stop, in order.
 */
export function runorder(
  stops: any[][],
  minutesBetween?: any[][],
  leaveAt?: any,
  returnToStart?: any,
  columns?: any,
  kmPerHour?: any,
  detour?: any,
): any[][] {
  const leave = needed(readTimeOfDay(leaveAt, "leaveAt"), "leaveAt", "the time one is at the start, such as 09:00");
  if (!leave.ok) return answerTable(leave);
  const returns = readFlag(returnToStart, "returnToStart");
  if (!returns.ok) return answerTable(returns);
  const speed = readNumberBetween(kmPerHour, "kmPerHour", 1, 200);
  if (!speed.ok) return answerTable(speed);
  const bend = readNumberBetween(detour, "detour", 1, 5);
  if (!bend.ok) return answerTable(bend);
  const table = readTable({ cells: rangeArgument(stops), kind: "stops", needs: ["stop"], columns, argument: "stops" });
  if (!table.ok) return answerTable(table);
  const { columnOf, dataRows } = table.value;
  const cells = rangeArgument(minutesBetween);
  const isPlaced = columnOf["latitude"] !== undefined && columnOf["longitude"] !== undefined;
  if (cells === null && !isPlaced && dataRows.length > 1) {
    const expected = "a square table of minutes, or Latitude and Longitude in stops";
    return answerTable(fail("argument-missing", { argument: "minutesBetween", expected }));
  }
  const rows = readStops(table.value, cells === null && dataRows.length > 1);
  if (rows.length === 0) return answerTable(succeed(runTable(null)));
  const minutes =
    cells === null
      ? null
      : readMinutesBetween(
          cells,
          rows.map(({ said }) => said),
        );
  if (minutes?.ok === false) return answerTable(minutes);
  // From the start to itself where it is the only row, which has no place.
  const between = (from: number, to: number): number =>
    from === to
      ? 0
      : (minutes?.value[from]![to] ??
        travelMinutes(
          rows[from]!.place!,
          rows[to]!.place!,
          speed.value ?? usualTravel.kmPerHour,
          bend.value ?? usualTravel.detour,
        ));
  const plan = planRun(rows, between, leave.value, returns.value ?? true);
  return answerTable(plan.ok ? succeed(runTable(plan.value)) : plan);
}
