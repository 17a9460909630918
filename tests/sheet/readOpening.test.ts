import fc from "fast-check";
import { readOpening } from "../../src/sheet/readOpening";

/** "10:00-13:00 14:00-18:00". */
function spans(open: unknown, close: unknown = null): string {
  const read = readOpening(open, close, "Open", "Close");
  if (!read.ok) return `${read.problem.reason}: ${(read.problem.facts as { argument: string }).argument}`;
  return read.value === null
    ? "blank"
    : read.value.map(({ from, until }) => `${clock(from)}-${clock(until)}`).join(" ");
}

function clock(time: number): string {
  const minutes = Math.round(time * 1440);
  return `${String(Math.floor(minutes / 60)).padStart(2, "0")}:${String(minutes % 60).padStart(2, "0")}`;
}

test.each([
  [10 / 24, 18 / 24, "10:00-18:00"],
  ["10:00", "18:00", "10:00-18:00"],
  ["9.30am", "6pm", "09:30-18:00"],
  ["10-13, 14-18", null, "10:00-13:00 14:00-18:00"],
  ["10–13 / 14–18", null, "10:00-13:00 14:00-18:00"],
  ["10:00, 14:00", "13:00, 18:00", "10:00-13:00 14:00-18:00"],
  ["9am to 6pm", null, "09:00-18:00"],
  ["2-6pm", null, "14:00-18:00"],
  ["11-2pm", null, "11:00-14:00"],
  ["9 bis 17", null, "09:00-17:00"],
  ["22:00", "02:00", "22:00-26:00"],
  ["10:00", null, "10:00-24:00"],
  [null, "18:00", "00:00-18:00"],
  ["9-6", null, "09:00-18:00"],
  ["9am-6", null, "09:00-18:00"],
  ["10 to 6", null, "10:00-18:00"],
  ["9-1, 2-6", null, "09:00-13:00 14:00-18:00"],
  ["9-12 and 1-5", null, "09:00-12:00 13:00-17:00"],
  ["9.30-5.30", null, "09:30-17:30"],
  ["12-8", null, "12:00-20:00"],
  ["10-10", null, "10:00-22:00"],
  ["7-11", null, "07:00-11:00"],
  ["2-6", null, "14:00-18:00"],
  ["02:00-06:00", null, "02:00-06:00"],
  ["9", "6", "09:00-18:00"],
  ["9:00", "6:00", "09:00-18:00"],
  [9 / 24, "6", "09:00-18:00"],
  ["9:00", "06:00", "09:00-30:00"],
  [9 / 24, 6 / 24, "09:00-30:00"],
  ["22-4", null, "22:00-28:00"],
  ["9pm-2am", null, "21:00-26:00"],
  ["10am–7pm", null, "10:00-19:00"],
  ["10:00-13:00, 14:00-19:00", null, "10:00-13:00 14:00-19:00"],
  ["de 10h à 19h", null, "10:00-19:00"],
  ["de 10 a 14 y de 16 a 20", null, "10:00-14:00 16:00-20:00"],
  ["dalle 10 alle 19", null, "10:00-19:00"],
  ["24h", null, "00:00-24:00"],
  ["24/7", null, "00:00-24:00"],
  [null, null, "blank"],
])("reads %p and %p as %s", (open, close, expected) => {
  expect(spans(open, close)).toBe(expected);
});

test.each([
  ["closed Mon", null, "argument-not-usable: Open"],
  ["Mon-Fri 10-18", null, "argument-not-usable: Open"],
  ["10-18, closed Mon", null, "argument-not-usable: Open"],
  ["from 10", null, "argument-not-usable: Open"],
  ["by appointment", null, "argument-not-usable: Open"],
  ["10:00", "late", "argument-not-usable: Close"],
  ["10, 14", "18", "argument-not-usable: Close"],
  ["10-13-14", null, "argument-not-usable: Open"],
  [{ error: "#REF!" }, null, "error-in-cell: Open"],
  ["10:00", { error: "#N/A" }, "error-in-cell: Close"],
])("refuses %p and %p with %s", (open, close, expected) => {
  expect(spans(open, close)).toBe(expected);
});

test("never throws, whatever the cells hold", () => {
  fc.assert(fc.property(fc.anything(), fc.anything(), (open, close) => void readOpening(open, close, "Open", "Close")));
});
