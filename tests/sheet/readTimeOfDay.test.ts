import fc from "fast-check";
import { readTimeOfDay } from "../../src/sheet/readTimeOfDay";
import { reads } from "./reads";

const at = (hour: number, minute = 0, second = 0): number => (hour * 3600 + minute * 60 + second) / 86400;

test.each([
  [0.5, 0.5],
  [0, 0],
  [1.25, 1.25],
  [46086.5, 0.5],
  ["09:30", at(9, 30)],
  ["9:30", at(9, 30)],
  ["09:30:15", at(9, 30, 15)],
  ["9.30", at(9, 30)],
  ["9.30am", at(9, 30)],
  ["9.30 a.m.", at(9, 30)],
  ["9:30 PM", at(21, 30)],
  ["9am", at(9)],
  ["9 p", at(21)],
  ["12am", 0],
  ["12 pm", 0.5],
  ["12:15 am", at(0, 15)],
  ["9h30", at(9, 30)],
  ["9h", at(9)],
  ["9 h 05", at(9, 5)],
  ["9 Uhr", at(9)],
  ["9.30 Uhr", at(9, 30)],
  ["0930", at(9, 30)],
  ["1745", at(17, 45)],
  ["0930 hrs", at(9, 30)],
  ["24:00", 1],
  ["25:30", at(25, 30)],
  ["noon", 0.5],
  ["12 noon", 0.5],
  ["midi", 0.5],
  [null, null],
  ["", null],
])("%j reads as %j of a day", (raw, fraction) => expect(reads(readTimeOfDay(raw, "call"))).toBe(fraction));

test.each([
  "midnight",
  "Mitternacht",
  "9",
  "930",
  "09:60",
  "48:00",
  "13pm",
  "0am",
  "9:3",
  "9:30-10:30",
  "half nine",
  "early",
  9,
  930,
  -0.1,
  2,
  46086,
  1e9,
  true,
  NaN,
  Infinity,
])("%j is no time of day", (raw) => expect(reads(readTimeOfDay(raw, "call"))).toBe("argument-not-usable"));

test("every minute of two days reads back from hh:mm exactly", () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 2879 }), (minutes) => {
      const text = `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
      expect(reads(readTimeOfDay(text, "call"))).toBe(minutes / 1440);
    }),
  );
});
