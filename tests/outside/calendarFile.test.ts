import { readFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import ICAL from "ical.js";
import { isoFromSerial } from "../../src/domain/dates/isoFromSerial";
import type { CalendarEvent } from "../../src/pane/handOver/files/CalendarEvent";
import { calendarText } from "../../src/pane/handOver/files/calendarText";
import { foldedLine } from "../../src/pane/handOver/files/foldedLine";
import { stableKey } from "../../src/pane/handOver/files/stableKey";

const rules = JSON.parse(readFileSync(join(__dirname, "calendarRules.json"), "utf8")) as {
  readonly text: readonly { readonly says: string; readonly written: string }[];
  readonly longestOctets: number;
  readonly fnv1a64: readonly (readonly [text: string, hash: string])[];
};

const octets = (text: string): number => Buffer.byteLength(text, "utf8");
/** RFC 5545, 3.1: a line end straight before a space or tab is taken out with it. */
const unfolded = (text: string): string => text.replace(/\r\n[ \t]/g, "");

const TODAY = 46086;
const event = (given: Partial<CalendarEvent>): CalendarEvent => ({
  uid: "due-1@test",
  day: TODAY,
  summary: "Due back",
  description: "",
  location: "",
  ...given,
});
const read = (text: string) =>
  new ICAL.Component(ICAL.parse(text) as never).getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));

/** Any text as a cell may hold it, with the signs that such a file lives by. */
const cellText = fc
  .array(
    fc.oneof(
      fc.string({ unit: "grapheme" }),
      fc.constantFrom("\\", ";", ",", ":", "\n", "\r\n", '"', "END:VEVENT\r\n", "é😀"),
    ),
    {
      maxLength: 40,
    },
  )
  .map((parts) => parts.join(""));
/** What a reader gets back of a text: line ends are one kind, and control signs have no place in the file. */
const kept = (text: string): string =>
  // Control signs are taken out, each line end is LF.
  text.replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F]/g, "").replace(/\r\n|\r/g, "\n");

test("the text of RFC 5545 3.3.11 is written as its examples have it", () => {
  for (const { says, written } of rules.text) {
    expect(unfolded(calendarText([event({ description: says })], TODAY, 1))).toContain(
      `\r\nDESCRIPTION:${written}\r\n`,
    );
  }
});

test("a line is folded by the rule of RFC 5545 3.1: at most 75 octets, none inside a character, and nothing lost", () => {
  fc.assert(
    fc.property(
      fc.string({ unit: "grapheme", maxLength: 400 }).map((text) => text.replace(/[\r\n]/g, "")),
      (line) => {
        const folded = foldedLine(line);
        const lines = folded.split("\r\n");
        expect(Math.max(...lines.map(octets))).toBeLessThanOrEqual(rules.longestOctets);
        expect(lines.slice(1).every((each) => each.startsWith(" "))).toBe(true);
        expect(lines.join("")).not.toContain("\uFFFD");
        expect(unfolded(folded)).toBe(line);
      },
    ),
  );
});

test("a line of 75 octets stays one line, one of 76 becomes two", () => {
  expect(foldedLine("x".repeat(75))).toBe("x".repeat(75));
  expect(foldedLine("x".repeat(76))).toBe(`${"x".repeat(75)}\r\n x`);
  expect(foldedLine("é".repeat(38))).toBe(`${"é".repeat(37)}\r\n é`);
});

test("an independent reader finds every entry again, whatever the cells hold", () => {
  fc.assert(
    fc.property(
      fc.array(
        fc.record({
          summary: cellText,
          description: cellText,
          location: cellText,
          day: fc.integer({ min: 61, max: 2_958_464 }),
        }),
        {
          maxLength: 6,
        },
      ),
      fc.nat(),
      (given, sequence) => {
        const events = given.map((each, at) => event({ ...each, uid: `due-${at}@test` }));
        const text = calendarText(events, TODAY, sequence);
        expect(text.split("\r\n").every((line) => octets(line) <= rules.longestOctets && !/[\r\n]/.test(line))).toBe(
          true,
        );
        const found = read(text);
        expect(found.map(({ uid }) => uid)).toEqual(events.map(({ uid }) => uid));
        for (const [at, each] of found.entries()) {
          const { summary, description, location, day } = events[at]!;
          expect(each.summary).toBe(kept(summary));
          expect(each.description ?? "").toBe(kept(description));
          expect(each.location ?? "").toBe(kept(location));
          expect(each.startDate.isDate).toBe(true);
          expect(each.startDate.toString()).toBe(isoFromSerial(day));
          expect(each.endDate.toString()).toBe(isoFromSerial(day + 1));
          expect(each.duration.toSeconds()).toBe(86_400);
          expect(each.sequence).toBe(sequence);
        }
      },
    ),
    { numRuns: 200 },
  );
});

test("the stamp is a moment in universal time, as RFC 5545 3.8.7.2 asks, and the file names its version and maker", () => {
  const text = calendarText([event({})], TODAY, 3);
  expect(text).toContain("\r\nDTSTAMP:20260305T000000Z\r\n");
  expect(text.startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:")).toBe(true);
  expect(text.endsWith("END:VCALENDAR\r\n")).toBe(true);
});

test("the last day a sheet can hold has no day after it, and an entry without an end lasts one day", () => {
  const text = calendarText([event({ day: 2_958_465 })], TODAY, 1);
  expect(text).not.toContain("DTEND");
  expect(read(text)[0]?.duration.toSeconds()).toBe(86_400);
});

test("the short names of entries are those of the published FNV-1a values", () => {
  for (const [text, hash] of rules.fnv1a64) expect(stableKey(text)).toBe(hash);
});
