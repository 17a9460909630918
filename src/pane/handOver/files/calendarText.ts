import { isoFromSerial } from "../../../domain/dates/isoFromSerial";
import { lastSerial } from "../../../domain/dates/lastSerial";
import type { CalendarEvent } from "./CalendarEvent";
import { foldedLine } from "./foldedLine";
import { wellFormed } from "./wellFormed";

/**
 * Entries as a calendar file (RFC 5545), each for a whole day.
 *
 * `stampedOn` is the serial day on which the file is made; `sequence` counts the files made so far, so that a calendar which has an
 * earlier one takes this one for the newer.
 */
export function calendarText(events: readonly CalendarEvent[], stampedOn: number, sequence: number): string {
  const lines = [
    "BEGIN:VCALENDAR",
    "VERSION:2.0",
    "PRODID:-//Tackstitch//Hand over//EN",
    "CALSCALE:GREGORIAN",
    ...events.flatMap(({ uid, day, summary, description, location }) => [
      "BEGIN:VEVENT",
      `UID:${escaped(uid)}`,
      `DTSTAMP:${basicDate(stampedOn)}T000000Z`,
      `SEQUENCE:${sequence}`,
      `DTSTART;VALUE=DATE:${basicDate(day)}`,
      // The end of an entry is not part of it, and one without an end lasts its one day (RFC 5545, 3.6.1).
      ...(day < lastSerial ? [`DTEND;VALUE=DATE:${basicDate(day + 1)}`] : []),
      `SUMMARY:${escaped(summary)}`,
      ...(description === "" ? [] : [`DESCRIPTION:${escaped(description)}`]),
      ...(location === "" ? [] : [`LOCATION:${escaped(location)}`]),
      // A due date keeps nobody from being called elsewhere on that day.
      "TRANSP:TRANSPARENT",
      "END:VEVENT",
    ]),
    "END:VCALENDAR",
  ];
  return lines.map((line) => `${foldedLine(line)}\r\n`).join("");
}

/** The date without dashes, as RFC 5545 (3.3.4) has it. */
function basicDate(day: number): string {
  return isoFromSerial(day).replaceAll("-", "");
}

/** Text as RFC 5545 (3.3.11) has it. */
function escaped(text: string): string {
  return wellFormed(text)
    .replace(/[\\;,]/g, "\\$&")
    .replace(/\r\n|\r|\n/g, "\\n");
}
