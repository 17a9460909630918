import { fail } from "../domain/fail";
import type { Outcome } from "../domain/outcome";
import { showGiven } from "../domain/showGiven";
import { succeed } from "../domain/succeed";
import { figuresFromText } from "./figuresFromText";
import { readScalar } from "./readScalar";

const MINUTES = /^([\d.,]+)\s*(?:m|mn|mins?|minutes?|minuten?|minutos?|minut[io]|'|′)?\.?$/i;
const HOURS =
  /^([\d.,]+)\s*(?:h|hrs?|hours?|heures?|horas?|or[ae]|std|stunden?)\.?(?:\s*(\d{1,2})\s*(?:m|mn|mins?|minutes?|minuten?|minutos?|minut[io])?\.?)?$/i;
const CLOCK = /^(\d{1,2}):(\d{2})$/;

/**
 * A duration in minutes: a number, or text ("15", "15 min", "1h", "1h30", "1.5 hours").
 *
 * Blank is null; 0 is 0. A number above 0 and below 1, or text like 0:15, is a time of day and gives argument-not-usable
 * that says what to type; so do numbers below 0 and other text. An error value gives error-in-cell. No upper bound.
 */
export function readMinutes(raw: unknown, argument: string): Outcome<number | null> {
  if (typeof raw === "number" && (raw === 0 || (raw >= 1 && Number.isFinite(raw)))) return succeed(raw);
  const scalar = readScalar(raw, argument);
  if (!scalar.ok) return scalar;
  const value = scalar.value;
  if (value === null) return succeed(null);
  if (typeof value === "number") {
    if (value === 0 || (value >= 1 && Number.isFinite(value))) return succeed(value);
    return value > 0 && value < 1
      ? refuseClock(argument, Math.round(value * 1440))
      : refuse(argument, showGiven(value));
  }
  if (typeof value === "boolean") return refuse(argument, showGiven(value));
  const clock = CLOCK.exec(value);
  if (clock !== null) return refuseClock(argument, +clock[1]! * 60 + +clock[2]!);
  const hours = HOURS.exec(value);
  const figures = figuresFromText((hours ?? MINUTES.exec(value))?.[1] ?? "");
  // Three digits behind one separator ("1.500 min") read two ways, and no change is timed so finely.
  if (figures === null || figures.reads === "two ways" || +(hours?.[2] ?? 0) > 59)
    return refuse(argument, showGiven(value));
  const minutes = hours === null ? figures.amount : figures.amount * 60 + +(hours[2] ?? 0);
  return minutes > 0 && minutes < 1 ? refuseClock(argument, Math.round(minutes * 1440)) : succeed(minutes);
}

function refuse(argument: string, given: string): Outcome<never> {
  return fail("argument-not-usable", { argument, given, expected: "minutes as a number of 0 or more, such as 15" });
}

function refuseClock(argument: string, minutes: number): Outcome<never> {
  const given = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, "0")}`;
  return fail("argument-not-usable", {
    argument,
    given,
    expected: `minutes as a number: type ${minutes}, not ${given}`,
  });
}
