import { serialFromYmd } from "../domain/dates/serialFromYmd";
import { showGiven } from "../domain/showGiven";
import { isUndecided } from "../sheet/isUndecided";
import { readCell } from "../sheet/readCell";
import { readDate } from "../sheet/readDate";
import type { DayReading } from "./dayReading";

const BLANK: DayReading = { is: "blank" };
const DAY: DayReading = { is: "day" };
const ERROR: DayReading = { is: "error" };

/** What a cell of a date column says; 0 is blank, as some hosts send blanks so. */
export function readDay(raw: unknown): DayReading {
  if (typeof raw === "number" && raw >= 1 && raw < 2958466) return DAY;
  const cell = readCell(raw);
  if (cell === null || cell === 0 || (typeof cell === "string" && cell.trim() === "")) return BLANK;
  if (typeof cell === "object") return ERROR;
  const given = showGiven(cell);
  if (typeof cell === "string" && isUndecided(cell)) return { is: "undecided", given };
  const read = readDate(cell, "");
  if (read.ok) {
    if (read.value === null) return BLANK;
    return typeof cell === "number" ? DAY : { is: "text", given, day: read.value };
  }
  const { reason, facts } = read.problem;
  if (reason === "date-ambiguous") {
    const first = serialFromIso(facts.first);
    const second = serialFromIso(facts.second);
    if (first !== null && second !== null) return { is: "two days", given, first, second };
  }
  if (reason === "date-figures-only") {
    const day = serialFromIso(facts.only);
    if (day !== null) return { is: "text", given, day };
  }
  if (reason === "argument-not-usable") return { is: "wrong weekday", given, expected: facts.expected };
  return { is: "no day", given };
}

function serialFromIso(iso: string): number | null {
  const [year, month, day] = iso.split("-").map(Number);
  return serialFromYmd(year ?? NaN, month ?? NaN, day ?? NaN);
}
