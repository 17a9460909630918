import fc from "fast-check";
import { readClosedWeekdays } from "../../src/sheet/readClosedWeekdays";

const NAMES = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"];

/** "0000011": Monday first, 1 closed. */
function closed(raw: unknown): string {
  const read = readClosedWeekdays(raw, "Closed weekdays");
  if (!read.ok) return read.problem.reason;
  return read.value === null ? "blank" : NAMES.map((_, day) => (read.value! >> day) & 1).join("");
}

test.each([
  ["Sun, Mon", "1000001"],
  ["Sunday and Monday", "1000001"],
  ["sun mon", "1000001"],
  ["closed Mondays", "1000000"],
  ["Closed on Sun & Mon.", "1000001"],
  ["lun", "1000000"],
  ["lun et mar", "1100000"],
  ["fermé le dimanche", "0000001"],
  ["sáb, dom", "0000011"],
  ["lunedì", "1000000"],
  ["Sa/So", "0000011"],
  ["Sonntags", "0000001"],
  ["geschlossen: Mo", "1000000"],
  ["Sat-Mon", "1000011"],
  ["Sat – Mon", "1000011"],
  ["Fri to Sun", "0000111"],
  ["Mon-Wed, Sun", "1110001"],
  ["weekends", "0000011"],
  ["week-end", "0000011"],
  ["fin de semana", "0000011"],
  ["weekend + Mon", "1000011"],
  ["none", "0000000"],
  ["open daily", "0000000"],
  ["-", "0000000"],
  ["0000011", "0000011"],
  [1, "0000011"],
  [7, "0000110"],
  [11, "0000001"],
  ["11", "0000001"],
  [17, "0000010"],
  [null, "blank"],
  ["  ", "blank"],
])("reads %p as %s, Monday first", (raw, expected) => {
  expect(closed(raw)).toBe(expected);
});

test.each(["Mon afternoon", "by appointment", "do", "8", 8, 0, -1, true, "012", "Mon-", "closed", "every second Mon"])(
  "refuses %p, naming the column and what to write",
  (raw) => {
    const read = readClosedWeekdays(raw, "Closed weekdays");
    expect(read).toMatchObject({
      ok: false,
      problem: { reason: "argument-not-usable", facts: { argument: "Closed weekdays" } },
    });
  },
);

test("hands on an error value as one", () => {
  expect(closed({ error: "#REF!" })).toBe("error-in-cell");
});

test("reads any list of weekdays back, in any order", () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 6 }), { minLength: 1 }), (days) => {
      const expected = NAMES.map((_, day) => (days.includes(day) ? 1 : 0)).join("");
      expect(closed(days.map((day) => NAMES[day]).join(", "))).toBe(expected);
    }),
  );
});

test("never throws, whatever the cell holds", () => {
  fc.assert(fc.property(fc.anything(), (raw) => void readClosedWeekdays(raw, "x")));
});
