import { clockSeconds } from "../../domain/day/clockSeconds";
import { dayPlan } from "../../domain/day/dayPlan";
import type { Look } from "../../domain/day/look";
import { looksInOrder } from "../../domain/day/looksInOrder";
import { minutesSpareAtWrap } from "../../domain/day/minutesSpareAtWrap";
import type { PlannedLook } from "../../domain/day/plannedDay";
import { sayWait } from "../../domain/day/sayWait";
import { sayProblem } from "../../domain/wording";
import { crewOnDay } from "../../sheet/crewOnDay";
import { dayNotesFor } from "../../sheet/dayNotesFor";
import { readLooks } from "../../sheet/readLooks";
import { readWorkbookNotes } from "../../sheet/readWorkbookNotes";
import type { SheetTable } from "../../sheet/sheetTable";
import type { ReadTables } from "../state/ReadTables";
import type { LookLine, DayLooks } from "./DayLooks";
import { placeOf } from "./placeOf";
import { rowOfLook } from "./rowOfLook";

/**
 * The looks of a day in the order they are shot, with the times DAYPLAN gives them.
 *
 * The day is the one wanted where it has looks; else the as-of day, else the next one after it, else the first. A look
 * without a date belongs to every day. `typedCalls` are calls typed into the pane, by day, for workbooks that hold none.
 * null where the workbook has no table of looks.
 */
export function looksToday(
  read: ReadTables,
  asOf: number,
  wantedDay: number | null,
  typedCalls: ReadonlyMap<number, number>,
): DayLooks | null {
  const table = read.tables.find(({ kind, dataRows }) => kind === "looks" && dataRows.length > 0);
  if (table === undefined) return null;
  const notes = readWorkbookNotes(read.workbook.sheets, read.tables);
  const looks = readLooks(table);
  if (!looks.ok) {
    const untold = { days: [], day: null, lines: [], call: null, callPlace: null, wrap: null, given: null };
    return { ...untold, crew: notes.crew, plan: null, minutesSpareAtWrap: null, sentence: sayProblem(looks.problem) };
  }

  const days = [...new Set(looks.value.flatMap(({ date }) => (date === null ? [] : [date])))].sort((a, b) => a - b);
  const day = dayShown(days, asOf, wantedDay);
  const ofDay = looks.value.filter(({ date }) => date === null || day === null || date === day);
  const said = dayNotesFor(notes.days, day, days.length);
  const crew = crewOnDay(notes.crew, said);
  // A call typed into the pane is the last resort.
  const call = said.call?.value ?? typedCalls.get(day ?? 0) ?? null;
  const given = call === null ? null : { looks: ofDay, call, crew: crew.crew, changes: new Map() };
  const plan = given === null ? null : dayPlan(given);
  const planned = plan?.ok === true ? plan.value : null;
  const inOrder = looksInOrder(ofDay, clockSeconds(call ?? 0));
  const spare = planned === null || said.wrap === null ? null : minutesSpareAtWrap(planned, said.wrap.value);
  return {
    days,
    day,
    lines:
      planned === null
        ? inOrder.map((look) => lookLine(table, look, null))
        : planned.looks.map((one) => lookLine(table, one.look, one)),
    call,
    callPlace: said.call,
    wrap: said.wrap,
    crew,
    given: given === null ? null : { table, day: given, looks: inOrder },
    plan: planned,
    minutesSpareAtWrap: spare?.ok === true ? spare.value : null,
    sentence: plan?.ok === false ? sayProblem(plan.problem) : null,
  };
}

function dayShown(days: readonly number[], asOf: number, wantedDay: number | null): number | null {
  if (wantedDay !== null && days.includes(wantedDay)) return wantedDay;
  return days.find((day) => day >= asOf) ?? days[0] ?? null;
}

function lookLine(table: SheetTable, look: Look, planned: PlannedLook | null): LookLine {
  return {
    at: placeOf(table, rowOfLook(table, look) ?? table.headingRow, ["look"]),
    sheetName: table.sheetName,
    label: String(look.label),
    talent: look.talentText,
    isShot: look.shotAt !== null,
    times:
      planned === null
        ? null
        : {
            changeFrom: planned.changeFrom,
            readyBy: planned.readyBy,
            shootFrom: planned.shootFrom,
            shootUntil: planned.shootUntil,
            minutesSpare: planned.minutesSpare,
            waitsFor: sayWait(planned.waitsFor),
          },
  };
}
